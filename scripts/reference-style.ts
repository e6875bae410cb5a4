/** Style of the reference page; colours keep a contrast of at least 4.5:1 in both schemes. */
export const referenceStyle = `
:root { color-scheme: light dark; --ink: #1b2026; --paper: #ffffff; --quiet: #55606b; --line: #c9d0d6; --link: #0b5a8a; --mark: #fff4d6; --code: #eef2f5; }
@media (prefers-color-scheme: dark) {
  :root { --ink: #e6e9ec; --paper: #16191d; --quiet: #a5afb8; --line: #3c444c; --link: #7cc0ee; --mark: #3a3016; --code: #242a30; }
}
body { margin: 0 auto; max-width: 60rem; padding: 1rem 1.25rem 4rem; color: var(--ink); background: var(--paper); font: 1rem/1.5 system-ui, "Segoe UI", sans-serif; }
a { color: var(--link); }
h1, h2, h3, h4 { line-height: 1.25; }
h2 { margin-top: 2.5rem; border-bottom: 1px solid var(--line); }
h3 { margin-top: 2rem; }
h4 { margin: 1rem 0 0.25rem; }
code { background: var(--code); padding: 0.1em 0.3em; border-radius: 3px; overflow-wrap: anywhere; }
nav ul { list-style: none; padding: 0; }
nav a { display: inline-block; padding: 0.15rem 0.25rem; }
nav .category { font-weight: 600; }
table { border-collapse: collapse; width: 100%; }
.spill { width: auto; }
th, td { text-align: left; vertical-align: top; padding: 0.3rem 0.6rem 0.3rem 0; border-bottom: 1px solid var(--line); }
.wide { overflow-x: auto; }
.quiet { color: var(--quiet); }
.caution { background: var(--mark); padding: 0.5rem 0.75rem; border-left: 4px solid currentColor; }
:target { background: var(--mark); }
`;
