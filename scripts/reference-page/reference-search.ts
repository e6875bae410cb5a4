/** The page's only script. Without it every function stands open and the search field stays hidden. */
export const referenceSearch = `
const field = document.querySelector("#query");
const found = document.querySelector("#found");
const functions = [...document.querySelectorAll(".function")].map((section) => {
  const heading = section.querySelector("h3");
  return { section, name: heading.id, text: section.textContent.toLowerCase(), links: document.querySelectorAll('nav li > [href="#' + heading.id + '"]') };
});
const others = document.querySelectorAll("main > .about");
const wordsOf = () => field.value.toLowerCase().replace(/bath\\./g, "").split(/[^\\p{L}\\p{N}.°%]+/u).filter(Boolean);
function show() {
  const words = wordsOf();
  let count = 0;
  for (const { section, text, links } of functions) {
    section.hidden = !words.every((word) => text.includes(word));
    for (const link of links) link.parentElement.hidden = section.hidden;
    if (!section.hidden) count += 1;
  }
  for (const chapter of document.querySelectorAll(".chapter")) chapter.hidden = !chapter.querySelector(".function:not([hidden])");
  for (const other of others) other.hidden = words.length > 0;
  found.textContent = words.length === 0 ? "" : count === 0 ? "No function says that. Try another word, such as dose, trigger or hardness." : count + " of " + functions.length + " functions";
}
function go() {
  const shown = functions.filter(({ section }) => !section.hidden);
  const word = wordsOf()[0];
  const target = shown.find(({ name }) => name === word) ?? shown.find(({ name }) => name.includes(word)) ?? shown[0];
  if (word && target) location.hash = target.name;
}
function reveal() {
  const target = document.getElementById(decodeURIComponent(location.hash.slice(1)));
  if (!target?.closest("[hidden]")) return;
  field.value = "";
  show();
  target.scrollIntoView();
}
field.addEventListener("input", show);
field.form.addEventListener("submit", (event) => { event.preventDefault(); go(); });
addEventListener("hashchange", reveal);
field.form.hidden = false;
show();
`;
