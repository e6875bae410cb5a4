import { type BrandVariants, createDarkTheme, createLightTheme, type Theme } from "@fluentui/react-components";

/** Our own ramp: the green-blue of a clean tank, darkest first. */
const tank: BrandVariants = {
  10: "#02080A",
  20: "#0A191D",
  30: "#0F2A30",
  40: "#133740",
  50: "#17454F",
  60: "#1B535F",
  70: "#21626F",
  80: "#2A717F",
  90: "#3A808E",
  100: "#4E909D",
  110: "#65A0AC",
  120: "#7EB1BB",
  130: "#99C2CB",
  140: "#B5D3DA",
  150: "#D1E4E8",
  160: "#EBF4F6",
};

const typeface =
  "'Segoe UI Variable Text', 'Segoe UI', system-ui, -apple-system, 'Helvetica Neue', 'DejaVu Sans', sans-serif";

const shared: Partial<Theme> = {
  fontFamilyBase: typeface,
  fontFamilyNumeric: typeface,
  borderRadiusMedium: "6px",
  borderRadiusLarge: "8px",
  borderRadiusXLarge: "12px",
};

/** Warm paper behind, ink in front, as in the log's sheets. */
export const lightTheme: Theme = {
  ...createLightTheme(tank),
  ...shared,
  colorBrandBackground: tank[60],
  colorBrandBackgroundHover: tank[50],
  colorBrandBackgroundPressed: tank[40],
  colorCompoundBrandStroke: tank[70],
  colorCompoundBrandForeground1: tank[60],
  colorBrandForeground1: tank[60],
  colorBrandForeground2: tank[50],
  colorBrandForegroundLink: tank[60],
  colorNeutralBackground2: "#F6F7F4",
  colorNeutralBackground3: "#EEF1EE",
  colorNeutralForeground1: "#1B2529",
  colorNeutralForeground2: "#38454A",
  colorNeutralForeground3: "#56646A",
};

export const darkTheme: Theme = {
  ...createDarkTheme(tank),
  ...shared,
  colorBrandForeground1: tank[130],
  colorBrandForeground2: tank[140],
  colorBrandForegroundLink: tank[130],
  colorCompoundBrandForeground1: tank[130],
  colorCompoundBrandStroke: tank[120],
  colorBrandBackground: tank[70],
  colorBrandBackgroundHover: tank[80],
  colorBrandBackgroundPressed: tank[60],
  colorNeutralBackground1: "#151B1D",
  colorNeutralBackground2: "#101516",
  colorNeutralBackground3: "#1D2528",
};
