import { formsWith } from "../../src/core/safety/caution-places.ts";
import { type CautionId, cautions } from "../../src/core/safety/cautions.ts";
import { text } from "./html-text.ts";

function isCaution(id: string): id is CautionId {
  return id in cautions;
}

/** Every caution once with its steps, since many of them belong to work for which there is no function. */
export const safetySection = `<section class="about" aria-labelledby="safety">
<h2 id="safety">Safety, step by step</h2>
<p>The label, the SDS and the permit win over all of this. Each form of the pane shows what belongs to its step.</p>
<div class="caution"><ul>
${Object.keys(cautions)
  .filter(isCaution)
  .map(
    (id) =>
      `<li>${text(cautions[id].text)} <span class="source">At: ${text(formsWith(id).join(", "))}. ${text(cautions[id].source)}.</span></li>`,
  )
  .join("\n")}
</ul></div>
</section>`;
