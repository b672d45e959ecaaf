// What the bar says of the open file, in a few words.

/**
 * @param isThere Whether the program answers.
 * @param isChanged Whether the file holds another text than this window.
 * @param inMemoryOnly The files of this window whose typing the disk refuses.
 */
export function stateOf({ name, isThere, isChanged, inMemoryOnly }) {
  if (!isThere) return isChanged ? 'Not saved: Sketch does not answer' : 'Sketch does not answer';
  // What was just saved is still named for a moment.
  if (isChanged && inMemoryOnly.includes(name)) return 'Not saved, and not on the disk';
  const other = inMemoryOnly.find((file) => file !== name);
  return `${isChanged ? 'Not saved' : 'Saved'}${other ? `; ${other} is not on the disk` : ''}`;
}
