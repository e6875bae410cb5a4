/** Which Excel this is. */
export interface HostFacts {
  readonly platform: string;
  readonly version: string;
  readonly languages: string;
  /** The highest version of each requirement set, as "ExcelApi 1.14". */
  readonly sets: readonly string[];
}

/** Sets and the highest version to ask for; those of Excel as its page of requirement sets lists them. */
const asked: Readonly<Record<string, number>> = {
  ExcelApi: 30,
  ExcelApiDesktop: 5,
  ExcelApiOnline: 1,
  CustomFunctionsRuntime: 9,
  SharedRuntime: 9,
  RibbonApi: 3,
  AddinCommands: 3,
  DialogApi: 3,
  File: 1,
  CompressedFile: 1,
  PdfFile: 1,
};

function highest(name: string, most: number): readonly string[] {
  const minors = Array.from({ length: most }, (_, index) => most - index);
  const found = minors.find((minor) => Office.context.requirements.isSetSupported(name, `1.${String(minor)}`));
  return found === undefined ? [] : [`${name} 1.${String(found)}`];
}

export function hostFacts(): HostFacts {
  const { diagnostics, displayLanguage, contentLanguage, platform } = Office.context;
  return {
    platform: String(platform),
    version: diagnostics.version,
    languages: `${displayLanguage} shown, ${contentLanguage} for editing`,
    sets: Object.entries(asked).flatMap(([name, most]) => highest(name, most)),
  };
}
