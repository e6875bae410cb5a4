import { figure } from "./wording/figures.ts";

/** A tested hardness or alkalinity with its unit, as the sheets hand it to the functions: a bare 18 could be grains. */
export function labFigure(tested: number): string;
export function labFigure(tested: number | undefined): string | undefined;
export function labFigure(tested: number | undefined): string | undefined {
  return tested === undefined ? undefined : `${figure(tested, 2)} mg/L`;
}
