/** What can hurt someone who acts on a result, by what is done with it; the texts are those of the sheets and forms. */
import { cautionsOfFunctions } from "../../src/core/safety/caution-places.ts";

export const alkaliCautions = cautionsOfFunctions("titrating");

export const chargeCautions = cautionsOfFunctions("charging");

export const topUpCautions = cautionsOfFunctions("toppingUp");

export const acidCautions = cautionsOfFunctions("neutralizing");

export const releaseCautions = cautionsOfFunctions("discharging");

export const heatCautions = cautionsOfFunctions("heating");
