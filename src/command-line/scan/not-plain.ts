/** The file holds something that scanning does not know; the whole reader has to read or refuse it. */
export class NotPlain extends Error {
  constructor(where: string) {
    super(`${where} is not plain.`);
    this.name = "NotPlain";
  }
}
