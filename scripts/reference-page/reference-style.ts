/** Style of the reference page; text keeps a contrast of at least 4.5:1 in both schemes. */
const screen = `
:root { color-scheme: light dark; --ink: #17323a; --paper: #ffffff; --card: #ffffff; --quiet: #4a626a; --line: #cfdde1; --deep: #12424e; --on-deep: #ffffff; --link: #0f6475; --code: #eaf2f4; --warn: #fff4dc; --warn-line: #a05a00; --target: #1f7a8c; }
@media (prefers-color-scheme: dark) {
  :root { --ink: #e2eaec; --paper: #11191c; --card: #172226; --quiet: #a3b5bb; --line: #31434a; --deep: #0c2d36; --link: #7fcbdc; --code: #22323a; --warn: #33280f; --warn-line: #e0a23c; --target: #7fcbdc; }
}
* { box-sizing: border-box; }
html { scroll-padding-top: 1rem; }
body { margin: 0; color: var(--ink); background: var(--paper); font: 1rem/1.55 "Segoe UI", system-ui, "Helvetica Neue", Arial, sans-serif; overflow-wrap: break-word; }
header { background: var(--deep); color: var(--on-deep); padding: 1.5rem max(1rem, calc(50vw - 36rem)) 1.25rem; }
h1 { margin: 0; font-size: 1.75rem; line-height: 1.2; }
.motto { margin: 0.25rem 0 0; font-weight: 600; }
form { margin: 1rem 0 0; max-width: 32rem; }
label { display: block; font-weight: 600; }
input { width: 100%; min-height: 44px; margin-top: 0.25rem; padding: 0 0.75rem; font: inherit; color: var(--ink); background: var(--card); border: 1px solid var(--line); border-radius: 6px; }
input:focus-visible { outline: 3px solid #ffd27a; outline-offset: 2px; }
#found { min-height: 1.55em; margin: 0.25rem 0 0; }
a { color: var(--link); text-underline-offset: 0.15em; }
:focus-visible { outline: 2px solid var(--target); outline-offset: 2px; border-radius: 3px; }
nav ul { list-style: none; margin: 0; padding: 0; }
nav .names { display: none; }
nav > ul { display: flex; flex-wrap: wrap; gap: 0 1rem; padding: 0.75rem 1rem; }
nav a { display: inline-block; padding: 0.35rem 0; }
main { padding: 0 1rem 4rem; min-width: 0; }
h2, h3, h4 { line-height: 1.25; }
h2 { margin: 2.5rem 0 0.75rem; font-size: 1.4rem; }
h3 { margin: 0; font-size: 1.2rem; }
h3 a { color: inherit; text-decoration: none; }
h3 a:hover { text-decoration: underline; }
h4 { margin: 1.1rem 0 0.25rem; font-size: 1rem; }
p, ul, dl { margin: 0.4rem 0; }
main ul { padding-left: 1.2rem; }
code { font-family: "Cascadia Mono", Consolas, "DejaVu Sans Mono", monospace; font-size: 0.9em; background: var(--code); padding: 0.1em 0.3em; border-radius: 4px; overflow-wrap: anywhere; box-decoration-break: clone; -webkit-box-decoration-break: clone; }
.function { margin: 0 0 1.25rem; padding: 1rem; background: var(--card); border: 1px solid var(--line); border-radius: 10px; }
.function:has(:target) { border-color: var(--target); box-shadow: inset 4px 0 0 var(--target); }
[hidden] { display: none !important; }
.signature { margin: 0.75rem 0; }
.signature code { display: block; padding: 0.5rem 0.75rem; }
.arguments > div { padding: 0.45rem 0; border-top: 1px solid var(--line); }
.arguments { border-bottom: 1px solid var(--line); }
dd { margin: 0; }
.facts, .quiet, .unit, .source { color: var(--quiet); }
.source { font-size: 0.875rem; display: block; }
.caution { background: var(--warn); border-left: 4px solid var(--warn-line); border-radius: 0 8px 8px 0; padding: 0.6rem 0.9rem; margin: 0.9rem 0; }
.caution h4 { margin: 0; }
.caution li { margin: 0.3rem 0; }
.formula { overflow-x: auto; padding: 0.35rem 0.9rem; border-left: 4px solid var(--line); }
.equation { margin: 0.35rem 0; font-size: 1.15rem; white-space: nowrap; }
main .legend { list-style: none; padding: 0; margin: 0.5rem 0; display: flex; flex-wrap: wrap; gap: 0.1rem 1.25rem; }
math { font-family: "Cambria Math", "STIX Two Math", "Latin Modern Math", "DejaVu Math TeX Gyre", math; }
.legend math { margin-right: 0.3em; }
.examples li { margin: 0.4rem 0; }
.wide { overflow-x: auto; max-width: 100%; }
table { border-collapse: collapse; }
th, td { text-align: left; vertical-align: top; padding: 0.3rem 0.8rem 0.3rem 0; border-bottom: 1px solid var(--line); }
.spill { font-size: 0.9rem; margin: 0.25rem 0; border: 1px solid var(--line); }
.spill td { padding: 0.25rem 0.6rem; border: 1px solid var(--line); }
`;

const phone = `
@media (max-width: 44rem) {
  .stacks thead { position: absolute; clip-path: inset(50%); width: 1px; height: 1px; overflow: hidden; }
  .stacks, .stacks tbody, .stacks tr, .stacks th, .stacks td { display: block; }
  .stacks tr { padding: 0.5rem 0; border-bottom: 1px solid var(--line); }
  .stacks th, .stacks td { border: 0; padding: 0.1rem 0; }
  .stacks td::before { content: attr(data-label) ": "; color: var(--quiet); }
}
`;

const desk = `
@media screen and (min-width: 60rem) {
  body { display: grid; grid-template: auto 1fr / 15rem minmax(0, 1fr); column-gap: 2rem; padding: 0 max(1rem, calc(50vw - 36rem)) 0; }
  header { grid-column: 1 / -1; margin: 0 calc(-1 * max(1rem, calc(50vw - 36rem))); }
  nav { position: sticky; top: 0; align-self: start; max-height: 100vh; overflow-y: auto; padding: 1.5rem 0; font-size: 0.9rem; }
  nav > ul { display: block; padding: 0 0.25rem; }
  nav .category { margin-bottom: 0.6rem; }
  nav .category > a { font-weight: 600; padding: 0.15rem 0; }
  nav .names { display: block; }
  nav .names a { padding: 0.15rem 0 0.15rem 0.75rem; }
  main { padding: 0 0 4rem; }
  .function { padding: 1.25rem 1.5rem; }
  .arguments > div { display: grid; grid-template-columns: 14rem minmax(0, 1fr); column-gap: 1rem; }
}
`;

const print = `
@media print {
  :root { --ink: #000; --paper: #fff; --card: #fff; --quiet: #333; --line: #999; --link: #000; --code: #f2f2f2; --warn: #fff; --warn-line: #000; color-scheme: light; }
  @page { margin: 14mm; }
  html { font-size: 8.5pt; }
  body { line-height: 1.35; }
  header { background: none; color: #000; padding: 0 0 4mm; }
  form { display: none; }
  nav > ul { display: block; columns: 3; padding: 0; }
  nav .category { break-inside: avoid; margin-bottom: 2mm; }
  nav .category > a { font-weight: 600; }
  nav .names { display: block; }
  nav .names li { display: inline; margin-right: 0.6em; }
  nav a { padding: 0; }
  a { text-decoration: none; }
  main { padding: 0; }
  h2, h3, h4 { break-after: avoid; }
  .function { border-width: 1px 0 0; border-radius: 0; padding: 3mm 0; margin: 0; break-inside: avoid; }
  .arguments > div { display: grid; grid-template-columns: 38mm minmax(0, 1fr); column-gap: 3mm; padding: 0.8mm 0; }
  h2 { margin-top: 6mm; }
  h4 { margin-top: 2mm; }
  p, ul, dl, .signature, .examples li { margin-block: 0.8mm; }
  .equation { margin: 0.5mm 0; }
  .wide, .formula { overflow: visible; }
  table { max-width: 100%; }
  td, th { overflow-wrap: anywhere; }
  li, tr, .caution { break-inside: avoid; }
}
`;

export const referenceStyle = screen + phone + desk + print;
