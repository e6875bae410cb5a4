import { modelNotes } from "../../functions/top-up/model-notes.ts";
import { text } from "./html-text.ts";

/** Where functions that ask the chemistry of a bath send their reader. */
export const modelAnchor = "builder";

/** What all of those functions take for granted, told once. */
export const modelSection = `<section class="about" aria-labelledby="${modelAnchor}">
<h2 id="${modelAnchor}">Builder and water</h2>
<p>The builder is what makes a concentrate alkaline: hydroxide, silicate, carbonate or phosphate. Every function that works out the pH of a bath holds to this:</p>
<ul>
${modelNotes.map((note) => `<li>${text(note)}</li>`).join("\n")}
</ul>
</section>`;
