/** Breaks a text at spaces into lines of at most `characters`; a longer word gets a line of its own. */
export function linesOf(text: string, characters: number): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(" ")) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= characters) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}
