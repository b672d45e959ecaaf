// The state of the open file for the toolbar, in a few words.

/**
 * @param isThere Whether the program responds.
 * @param isChanged Whether the file differs from the text of this window.
 * @param inMemoryOnly The files of this window whose edits cannot be written to disk.
 */
export function stateOf({ name, isThere, isChanged, inMemoryOnly }) {
  if (!isThere) return isChanged ? 'Not saved: Sketch does not answer' : 'Sketch does not answer';
  // A save stays mentioned for a moment.
  if (isChanged && inMemoryOnly.includes(name)) return 'Not saved, and not on the disk';
  const other = inMemoryOnly.find((file) => file !== name);
  return `${isChanged ? 'Not saved' : 'Saved'}${other ? `; ${other} is not on the disk` : ''}`;
}
