/** Margins in inches: small ones leave room for wide tables, the footer stays clear of the edge. */
export const pageMargins = { left: 0.25, right: 0.25, top: 0.5, bottom: 0.6, header: 0.3, footer: 0.3 } as const;
