// How large pictures are printed by the browser.

// What a browser's paper leaves for a picture and its caption within the margins of page.css, on letter and on A4 alike, in millimetres.
const upright = { width: 186, height: 235 };
const lying = { width: 255, height: 178 };

/** How a picture of a size in millimetres is printed: across the page, or smaller than true size where no page holds it. */
export function printedAs({ width, height }) {
  const fits = (page) => width <= page.width && height <= page.height;
  const isBeyond = !fits(upright) && !fits(lying);
  return { isBeyond, isLying: isBeyond ? width > height : !fits(upright) };
}
