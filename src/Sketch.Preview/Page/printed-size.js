// The size at which the browser prints pictures.

// The room for a picture and its caption within the margins of page.css, on both letter and A4 paper, in millimetres.
const upright = { width: 186, height: 235 };
const lying = { width: 255, height: 178 };

/** How a picture of a size in millimetres is printed: rotated on the page, or smaller than true size where no page holds it. */
export function printedAs({ width, height }) {
  const fits = (page) => width <= page.width && height <= page.height;
  const isBeyond = !fits(upright) && !fits(lying);
  return { isBeyond, isLying: isBeyond ? width > height : !fits(upright) };
}
