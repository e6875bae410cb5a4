/** Why a calculation was refused: an input outside its domain, or a question that has no answer. */
export type Refusal = "invalid" | "no-answer";

/**
 * The one error that the core throws on purpose. `invalid` becomes `#VALUE!` in a cell, `no-answer`
 * becomes `#N/A`; both carry the message to the user.
 */
export class DomainError extends Error {
  readonly refusal: Refusal;

  constructor(refusal: Refusal, message: string) {
    super(message);
    this.name = "DomainError";
    this.refusal = refusal;
  }
}
