import { describe, expect, it } from "vitest";

import type { CellMatrix, CellValue } from "../../../functions/define-function.ts";
import { callFormula } from "../../reference/call-formula.ts";

type Row = readonly [formula: string, said: CellValue | CellMatrix];

/**
 * Odd inputs as shops type them, and the answer or the sentence that each gets. A sentence names the likely slip and
 * shows both readings. Numbers to six digits; the amounts behind them are tested elsewhere.
 */
const table: Readonly<Record<string, readonly Row[]>> = {
  "A hardness or an alkalinity without its unit": [
    ["=BATH.HARDNESSDOSE(121,18,2.4)", "Hardness is 18, without a unit; write “18 gpg” (308 mg/L) or “18 mg/L”."],
    ['=BATH.HARDNESSDOSE(121,"18",2.4)', "Hardness is 18, without a unit; write “18 gpg” (308 mg/L) or “18 mg/L”."],
    ['=BATH.HARDNESSDOSE(121,"18 gpg",2.4)', 15.5346],
    ['=BATH.HARDNESSDOSE(121,"18 mg/L",2.4)', 0.9075],
    ["=BATH.HARDNESSDOSE(121,51,2.4)", 2.57125],
    ["=BATH.HARDNESSDOSE(121,0.9,2.4)", 0.045375],
    ["=BATH.HARDNESSDOSE(121,308,2.4,7)", "Label hardness is 7, without a unit; write “7 gpg” (120 mg/L) or “7 mg/L”."],
    [
      '=BATH.HARDNESSDOSE(458,18,2.4,,"metric")',
      "Hardness is 18, without a unit; write “18 °dH” (321 mg/L) or “18 mg/L”.",
    ],
    [
      '=BATH.HARDNESSDOSE(100,18,2.4,,"imperial")',
      "Hardness is 18, without a unit; write “18 °Clark” (257 mg/L) or “18 mg/L”.",
    ],
    ["=BATH.HARDNESSCLASS(18)", "Hardness is 18, without a unit; write “18 gpg” (308 mg/L) or “18 mg/L”."],
    ['=BATH.HARDNESSCLASS("18 gpg")', "very hard"],
    ["=BATH.SOFTENERLIFE(30000,18)", "Hardness is 18, without a unit; write “18 gpg” (308 mg/L) or “18 mg/L”."],
    ['=BATH.SOFTENERLIFE(30000,"18 gpg")', 1666.67],
    [
      '=BATH.LSI(7.5,"25 C",15,34,320)',
      "Calcium hardness is 15, without a unit; write “15 gpg” (257 mg/L) or “15 mg/L”.",
    ],
    [
      '=BATH.LSI(7.5,"25 C",150,3.4,320)',
      "Alkalinity is 3.4, without a unit; write “3.4 meq/L” (170 mg/L) or “3.4 mg/L”.",
    ],
    [
      "=BATH.ALKALINITYDOSE(121,4.8,0.55)",
      "Alkalinity is 4.8, without a unit; write “4.8 meq/L” (240 mg/L) or “4.8 mg/L”.",
    ],
    ['=BATH.ALKALINITYDOSE(121,"4.8 meq/L",0.55)', 1.056],
    ["=BATH.ALKALINITYDOSE(121,21,0.55)", 0.0923198],
    [
      '=BATH.TOPUPRANGE(4.178,11.42,10.83,"unknown","25 C",4.8)',
      "Alkalinity is 4.8, without a unit; write “4.8 meq/L” (240 mg/L) or “4.8 mg/L”.",
    ],
    [
      '=BATH.TRIGGER(11.42,0.5,77,131,"unknown",4.8)',
      "Alkalinity is 4.8, without a unit; write “4.8 meq/L” (240 mg/L) or “4.8 mg/L”.",
    ],
    ['=BATH.HARDNESSDOSE(121,"18 grains",2.4)', 15.5346],
    [
      '=BATH.HARDNESSDOSE(121,"18 grains",2.4,,"metric")',
      "Hardness is “18 grains”: grain is a unit of mass, not of hardness. Grains per US gallon are written gpg.",
    ],
    [
      '=BATH.HARDNESSDOSE(121,"18 grains",2.4,,"imperial")',
      "Hardness is “18 grains”: grain is a unit of mass, not of hardness. Grains per gallon are written °Clark (imperial gallon) or gpg (US gallon).",
    ],
    [
      '=BATH.UNITCONVERT(18,"grains","mg/L")',
      "“from” is “grains”, a unit of mass, and “to” is “mg/L”, one of hardness; they do not convert. Grains per gallon are written gpg.",
    ],
    ["=BATH.ALKALINITYSPLIT(0,240)", [[0, 0, 240]]],
    ["=BATH.ALKALINITYSPLIT(,240)", "P is blank. If it is truly none, write 0."],
    ["=BATH.ALKALINITYSPLIT(4,12)", [[0, 8, 4]]],
  ],
  "A temperature on the other scale": [
    [
      "=BATH.VERDICT(10.58,11.42,0.5,77,53)",
      "Reading temperature is 53, without a unit: at 53 F the verdict is “top up”, at 53 C (127.4 °F) “hold”; write “53 F” or “53 C”.",
    ],
    ['=BATH.VERDICT(10.58,11.42,0.5,77,"53 C")', "hold"],
    ['=BATH.VERDICT(10.58,11.42,0.5,77,"53 F")', "top up"],
    ['=BATH.VERDICT(10.58,11.42,0.5,77,53,,,"US")', "top up"],
    [
      "=BATH.VERDICT(10.2,11.42,0.5,77,60)",
      "Reading temperature is 60, without a unit: at 60 F the verdict is “top up”, at 60 C (140 °F) “re-read at 77 °F”; write “60 F” or “60 C”.",
    ],
    ["=BATH.VERDICT(11.3,11.42,0.5,77,60)", "near"],
    ["=BATH.VERDICT(11.0,11.42,0.5,77,68)", "top up"],
    ["=BATH.VERDICT(11.6,11.42,0.5,77,55)", "hold"],
    [
      "=BATH.VERDICT(10.58,11.42,0.5,77,25)",
      "Reading temperature is 25 °F; allowed: 32 to 176 °F. If it is in °C, write “25 C”.",
    ],
    [
      '=BATH.VERDICT(10.58,11.42,0.5,25,"53 C")',
      "Baseline temperature is 25 °F; allowed: 32 to 176 °F. If it is in °C, write “25 C”.",
    ],
    [
      '=BATH.VERDICT(10.58,11.42,0.5,25,127.4,,,"metric")',
      "Reading temperature is 127.4 °C; allowed: 0 to 80 °C. If it is in °F, write “127.4 F”.",
    ],
    ["=BATH.PHAT(11.3,77,53)", "To temperature is 53, without a unit; write “53 C” (127.4 °F) or “53 F”."],
    ["=BATH.PHAT(11.3,60,77)", "From temperature is 60, without a unit; write “60 C” (140 °F) or “60 F”."],
    ["=BATH.PHAT(11.3,77,60)", "To temperature is 60, without a unit; write “60 C” (140 °F) or “60 F”."],
    ['=BATH.PHAT(11.3,"60 F",77)', 10.9765],
    ["=BATH.PHAT(11.3,77,61)", 11.6011],
    ['=BATH.PHAT(11.3,77,60,,,"US")', 11.6208],
    ["=BATH.PHAT(11.3,77,20)", "To temperature is 20 °F; allowed: 32 to 176 °F. If it is in °C, write “20 C”."],
    [
      '=BATH.PHAT(11.3,"77 degrees",131)',
      "From temperature is “77 degrees”; did you mean “degrees F”? Write a number, or a number with one of K, °C, °F.",
    ],
    [
      '=BATH.PHAT(11.3,"77 degrees",55,,,"metric")',
      "From temperature is “77 degrees”; did you mean “degrees C”? Write a number, or a number with one of K, °C, °F.",
    ],
    [
      "=BATH.TRIGGERCARD(11.42,0.5,77,{40;50;60})",
      "One of the temperatures is 40, without a unit; write “40 C” (104 °F) or “40 F”.",
    ],
    ["=BATH.TRIGGER(11.42,0.5,77,45)", "Reading temperature is 45, without a unit; write “45 C” (113 °F) or “45 F”."],
    ["=BATH.TOPUP(4,11.42,10.83,,55)", "Temperature is 55, without a unit; write “55 C” (131 °F) or “55 F”."],
    ['=BATH.BUFFERPH("borax",25)', "Temperature is 25 °F; allowed: 32 to 140 °F. If it is in °C, write “25 C”."],
    ['=BATH.HEATENERGY(100,120,"60 F")', "“to” is 60 °F; allowed: more than 120 and at most 212 °F."],
    [
      "=BATH.HEATENERGY(100,15,140)",
      "“from” is 15 °F; allowed: at least 32 and less than 212 °F. If it is in °C, write “15 C”.",
    ],
    ["=BATH.HEATTIME(80,45,120,5.5)", 2.66606],
    [
      '=BATH.LSI(7.5,131,150,34,320,"metric")',
      "Temperature is 131 °C; allowed: 0 to 100 °C. If it is in °F, write “131 F”.",
    ],
  ],
  "A bath, a release or a target in °C where bare numbers are °F": [
    ["=BATH.DISCHARGECHECK(8,6,9,50)", "Temperature is 50, without a unit; write “50 C” (122 °F) or “50 F”."],
    ["=BATH.DISCHARGECHECK(8,6,9,60)", "Temperature is 60, without a unit; write “60 C” (140 °F) or “60 F”."],
    ['=BATH.DISCHARGECHECK(8,6,9,"50 F")', "within"],
    [
      '=BATH.DISCHARGECHECK(8,6,9,"50 C")',
      "Temperature is 50 °C; allowed: 0 to 40 °C. Let it cool and read again: a hot alkaline bath reads lower than a cool one.",
    ],
    ["=BATH.DISCHARGECHECK(8,6,9,77)", "within"],
    ['=BATH.ACIDTO(121,11.3,8.5,"citric",,50)', "Temperature is 50, without a unit; write “50 C” (122 °F) or “50 F”."],
    ['=BATH.SOLUTIONPH({"NaOH",0.01},55)', "Temperature is 55, without a unit; write “55 C” (131 °F) or “55 F”."],
    ["=BATH.HEATENERGY(121,40,55)", "“to” is 55, without a unit; write “55 C” (131 °F) or “55 F”."],
    ["=BATH.HEATTIME(80,45,60,5.5)", "“to” is 60, without a unit; write “60 C” (140 °F) or “60 F”."],
  ],
  "A tank measured in another unit": [
    [
      "=BATH.TANKVOLUME(3,2,2)",
      "Length is 3, without a unit, and the tank comes out very small: write each length with its unit, “3 ft” or “3 in”.",
    ],
    [
      "=BATH.TANKVOLUME(120,80,70)",
      "Length is 120, without a unit, and the tank comes out very large: write each length with its unit, “120 cm” or “120 in”.",
    ],
    [
      '=BATH.TANKVOLUME(0.9,0.6,0.66,,"metric")',
      "Length is 0.9, without a unit, and the tank comes out very small: write each length with its unit, “0.9 m” or “0.9 cm”.",
    ],
    [
      '=BATH.TANKVOLUME(900,600,660,,"metric")',
      "Length is 900, without a unit, and the tank comes out very large: write each length with its unit, “900 mm” or “900 cm”.",
    ],
    [
      "=BATH.ROUNDTANKVOLUME(2,3)",
      "Diameter is 2, without a unit, and the tank comes out very small: write each length with its unit, “2 ft” or “2 in”.",
    ],
    ['=BATH.TANKVOLUME("3 ft","2 ft","2 ft")', 89.7662],
    ['=BATH.TANKVOLUME("120 cm","80 cm","70 cm")', 177.524],
    ['=BATH.TANKVOLUME(120,80,70,,"US")', 2909.09],
    ["=BATH.TANKVOLUME(6,5,0.1)", 0.012987],
  ],
  "A share that may be a percentage": [
    ["=BATH.DOSE(121,0.5)", "Rate is 0.5, which as a share is 50 %; write “0.5%” or “50%”, as text."],
    [
      "=BATH.DOSETABLE({121},{0.25})",
      "One of the rates is 0.25, which as a share is 25 %; write “0.25%” or “25%”, as text.",
    ],
    ['=BATH.JARDOSE(82,16,10,"0.4")', "Label dose is 0.4, which as a share is 40 %; write “0.4%” or “40%”, as text."],
    ["=BATH.DOSE(121,0.1)", 12.1],
    ['=BATH.DOSE(121,"0.5%")', 0.605],
    [
      '=BATH.DOSE(121,"1:1000000")',
      "Rate is 0.0000999999 %; allowed: 0.01 to 50 %. No wash bath is thinner than 1+9999: is a percentage divided by 100 twice, or a ratio too long by some zeros?",
    ],
  ],
  "Dates beside hours": [
    [
      "=BATH.PHTREND({46082;24;48},{11.4;11.2;11})",
      "Times hold dates and hours, such as 24; write all as dates or all as hours.",
    ],
    [
      "=BATH.DRIFTFIX(11,46082,{1;48},{0.02;0.14})",
      "Check times hold dates and hours, such as 1; write all as dates or all as hours.",
    ],
    ["=BATH.PHTREND({1;24;48},{11.4;11.2;11})", -0.00851064],
  ],
  "A slip that makes a limit of no use": [
    ["=BATH.TRIGGER(11.42,5)", "Drop is 5; allowed: 0.05 to 3."],
    ["=BATH.VERDICT(7,11.42,5)", "Drop is 5; allowed: 0.05 to 3."],
    ["=BATH.TRIGGER(11.42,0.01)", "Drop is 0.01; allowed: 0.05 to 3."],
    ["=BATH.TRIGGER(11.42,0.05)", 11.37],
    ["=BATH.RECOVERED(11,11.42,5)", "Tolerance is 5; allowed: more than 0 and at most 1."],
  ],
  "A ratio that became a time of day": [
    [
      "=BATH.STRENGTH(0.0625)",
      "Rate is 0.0625, the time of day that Excel makes of 1:30; write “1+30”, or “6.25%” if it is a share, as text.",
    ],
    [
      "=BATH.STRENGTH(0.125)",
      "Rate is 0.125, the time of day that Excel makes of 1:120; write “1+120”, or “12.5%” if it is a share, as text.",
    ],
    [
      "=BATH.STRENGTH(0.05625)",
      "Rate is 0.05625, the time of day that Excel makes of 1:21; write “1+21”, or “5.625%” if it is a share, as text.",
    ],
    [
      "=BATH.STRENGTH(0.06944444444444445)",
      "Rate is 0.0694444, the time of day that Excel makes of 1:40; write “1+40”, or “6.94444%” if it is a share, as text.",
    ],
    ["=BATH.STRENGTH(0.05)", 0.05],
    ["=BATH.STRENGTH(0.1)", 0.1],
    ['=BATH.STRENGTH("6.25%")', 0.0625],
  ],
  "A strength in words": [
    ['=BATH.STRENGTH("1 in 28 parts water")', 0.0344828],
    ['=BATH.STRENGTH("1 part in 28 parts of water")', 0.0344828],
    ['=BATH.STRENGTH("1 in 28")', 0.0357143],
    ['=BATH.STRENGTH("3 oz per gallon of water")', 0.0229008],
    ['=BATH.STRENGTH("3 oz/gal")', 0.0234375],
    ['=BATH.STRENGTH("3 oz/imp gal")', 0.01875],
    ['=BATH.STRENGTH("3 imp fl oz/imp gal")', 0.01875],
    ['=BATH.STRENGTH("4 US fl oz/imp gal")', 0.0260211],
    [
      '=BATH.STRENGTH("3 oz wt/gal")',
      "Rate is “3 oz wt/gal”, a weight; a strength is volume in volume: write fl oz, mL or another measure of volume.",
    ],
    ['=BATH.UNITCONVERT(3,"imp fl oz/imp gal","%")', 1.875],
    [
      '=BATH.UNITCONVERT(3,"oz/gal","%")',
      "“from” is “oz/gal”, a unit of amount per volume, and “to” is “%”, one of strength; they do not convert. oz alone is a weight; a fluid ounce is written fl oz.",
    ],
    [
      '=BATH.UNITCONVERT(3,"oz","mL")',
      "“from” is “oz”, a unit of mass, and “to” is “mL”, one of volume; they do not convert. oz alone is a weight; a fluid ounce is written fl oz.",
    ],
    [
      '=BATH.MAKEUP(6,0,0,1.8,"90%")',
      "Rate is 90 %; allowed: 0.01 to 50 %. A bath is never more concentrate than water: 1+40 is 1 part of concentrate and 40 parts of water.",
    ],
  ],
  "A word inside a list": [
    ['=BATH.SHARE(578.99,{12;"ten";10})', "One of the weights is “ten”, not a number."],
    ['=BATH.SHARE(578.99,{"Baskets";12;10})', [[""], [315.81], [263.18]]],
    [
      '=BATH.DOSETABLE({29;"thirty"},{"1+28"})',
      "One of the volumes is “thirty”; write a number, or a number with one of m³, L, mL, US gal, US qt, US pt, US cup, US fl oz, imperial gal, imperial qt, imperial pt, imperial fl oz, in³, ft³.",
    ],
    [
      '=BATH.DOSETABLE({29},{"1+28";"strong"})',
      "One of the rates is “strong”; write 1+40, 1 in 40 or 2.5%, or 3 fl oz/gal, 25 mL/L.",
    ],
    [
      '=BATH.TRIGGERCARD(11.42,0.5,77,{77;"warm";104})',
      "One of the temperatures is “warm”; write a number, or a number with one of K, °C, °F.",
    ],
    ['=BATH.TOPUPTABLE(1,11.3,{11.3;"low"})', "One of the readings is “low”, not a number."],
    ['=BATH.STOCKDAYS(10,{1;"two";3})', "One of the issues is “two”, not a number."],
    ['=BATH.STOCKDAYS(10,{"Issued";1;3})', 5],
    ['=BATH.SOLUTIONPH({"NaOH","ten"})', "Composition is a range without a row of component and mol per kg of water."],
    [
      '=BATH.SOLUTIONPH({"NaOH",0.01;"Na2CO3","some"})',
      "Composition gives “some” for “Na2CO3”; write one number, such as the middle of a range.",
    ],
  ],
  "An amount that is in percent, or a range": [
    [
      '=BATH.SOLUTIONPH({"NaOH","0.5%"})',
      "Composition gives “0.5%” for “NaOH”; write mol per kg of water, without a percent sign.",
    ],
    ['=BATH.TOPUP(4.178,11.42,10.83,{"NaOH","5%";"Na2SiO3","3%"})', 3.24441],
    [
      '=BATH.TOPUP(4.178,11.42,10.83,{"NaOH","5-10"})',
      "Builder gives “5-10” for “NaOH”; write one number, such as the middle of a range.",
    ],
    [
      '=BATH.STRENGTH("2 to 3 oz/gal")',
      "Rate is “2 to 3 oz/gal”; write 1+40, 1 in 40 or 2.5%, or 3 fl oz/gal, 25 mL/L.",
    ],
    ['=BATH.STRENGTH("1:20 to 1:40")', "Rate is “1:20 to 1:40”; write 1+40, 1 in 40 or 2.5%, or 3 fl oz/gal, 25 mL/L."],
    [
      '=BATH.HARDNESSCLASS("18 gpm")',
      "Hardness is “18 gpm”; did you mean “gpg”? Write a number, or a number with one of mg/L CaCO3, g/L CaCO3, gpg, °e, °dH, °fH, meq/L, mmol/L.",
    ],
  ],
  "A chemical that is not known": [
    [
      '=BATH.ACIDFOR(60,"6 meq/L","nitric")',
      "Acid is “nitric”; write “citric”, “sodium bisulfate”, “hydrochloric”, “sulfuric”, “acetic”.",
    ],
    [
      '=BATH.ACIDFOR(60,"6 meq/L","hydrofluoric")',
      "Acid is “hydrofluoric”; write “citric”, “sodium bisulfate”, “hydrochloric”, “sulfuric”, “acetic”.",
    ],
    [
      '=BATH.TOPUP(4,11.3,10.8,"hidroxide")',
      "Builder is “hidroxide”; write “unknown”, “hydroxide”, “silicate”, “carbonate”, “phosphate”, or give the two columns of the SDS.",
    ],
    [
      '=BATH.BUFFERPH("fosphate","25 C")',
      "Buffer is “fosphate”; write “phthalate” (4), “phosphate” (6.86), “technical 7” (7), “phosphate 7.4” (7.4), “borax” (9.18), “carbonate” (10.01), “lime” (12.45). For another buffer read the table on its bottle.",
    ],
  ],
  "A verdict above the baseline": [
    ["=BATH.VERDICT(13.9,11.42)", "above baseline"],
    ["=BATH.VERDICT(11.42,10.58)", "above baseline"],
    ["=BATH.VERDICT(11.48,11.42)", "above baseline"],
    ["=BATH.VERDICT(11.47,11.42)", "hold"],
    ['=BATH.VERDICT(11.2,11.42,0.5,"25 C","55 C")', "above baseline"],
  ],
  "The meter": [
    [
      "=BATH.METERSLOPE(7,7.03,10,9.86)",
      "mV 1 and mV 2 are 7.03 and 9.86, which look like pH; switch the meter to mV and write what it shows",
    ],
    [
      "=BATH.METERSLOPE(7,,10,9.97)",
      "mV 1 and mV 2 are 0 and 9.97, which look like pH; switch the meter to mV and write what it shows",
    ],
    ["=BATH.METERSLOPE(7,7.5,10,-165)", 97.1951],
    [
      "=BATH.METERFIX(11,7,7.1,10,7.11)",
      "Read 1 and read 2 differ by 0.01 and the buffers by 3; by that line the reading would be pH 1177. Check which reading belongs to which buffer, and the typing",
    ],
    ["=BATH.METERFIX(11,7,7.03,10,9.86)", 11.2085],
    [
      "=BATH.METERFIX(11,7,7,10,9)",
      "The meter shows 2 where the buffers differ by 3. So far off nothing is corrected by arithmetic: clean and adjust the meter, then read again",
    ],
    [
      "=BATH.METERFIX(11,4,4.5,7,8.5)",
      "The meter shows 4 where the buffers differ by 3. So far off nothing is corrected by arithmetic: clean and adjust the meter, then read again",
    ],
    ["=BATH.BUFFERPH(4,77)", 4.005],
    ['=BATH.BUFFERPH("pH 4.01",77)', 4.005],
    ['=BATH.BUFFERPH(7,"20 C")', 7.016],
    ['=BATH.BUFFERPH("7.00",131)', "Temperature is 131 °F; allowed: 32 to 122 °F."],
    ["=BATH.BUFFERPH(10,77)", 10.012],
    [
      "=BATH.BUFFERPH(8,77)",
      "Buffer is “8”; write “phthalate” (4), “phosphate” (6.86), “technical 7” (7), “phosphate 7.4” (7.4), “borax” (9.18), “carbonate” (10.01), “lime” (12.45). For another buffer read the table on its bottle.",
    ],
  ],
  "Voltages of no working electrode": [
    [
      "=BATH.METERSLOPE(7,0,10,-30)",
      "The slope comes to 17 %, and an electrode that works gives 85 to 105 %: check both mV, and which buffer each was read in; a blank counts as 0. If they are right, the electrode is worn out.",
    ],
    [
      "=BATH.METERSLOPE(7,0,10,-305)",
      "The slope comes to 172 %, and an electrode that works gives 85 to 105 %: check both mV, and which buffer each was read in; a blank counts as 0. If they are right, the electrode is worn out.",
    ],
    [
      "=BATH.METERSLOPE(7,-177,10,-5)",
      "By these two it would show -177 mV at pH 7, and an electrode that works is within 30 of 0: were the two mV swapped, or one left blank?",
    ],
    [
      "=BATH.METERSLOPE(4.01,,7,175)",
      "By these two it would show 175 mV at pH 7, and an electrode that works is within 30 of 0: were the two mV swapped, or one left blank?",
    ],
    ["=BATH.METERSLOPE(7,40,10,-70)", 61.9795],
  ],
  "A fall that no meter can tell": [
    ["=BATH.TOPUP(4.178,11.42,11.38)", 0],
    ["=BATH.TOPUP(4.178,11.42,11.37)", 0],
    ['=BATH.TOPUP(4.178,11.42,11.38,"unknown",,,,0.02)', 0.409882],
    ["=BATH.TOPUP(4.178,11.42,10.83,,,,,0.6)", "Meter accuracy is 0.6; allowed: more than 0 and at most 0.5."],
  ],
  "More than the label allows": [
    [
      '=BATH.DOSE(121,"1+16","1+20")',
      "Rate comes to 1+16 (5.88 %), stronger than the label allows. Label highest is 1+20 (4.76 %); the label wins.",
    ],
    ['=BATH.DOSE(121,"1+28","1 in 29")', 4.17241],
    [
      '=BATH.JARDOSE(121,16,10,"1+28","1+20")',
      "This comes to 1+17.1 (5.52 %), stronger than the label allows. Label highest is 1+20 (4.76 %); the label wins.",
    ],
    [
      '=BATH.STRENGTHOF(7,121,"parts","1+20")',
      "This comes to 1+16.3 (5.79 %), stronger than the label allows. Label highest is 1+20 (4.76 %); the label wins.",
    ],
    [
      '=BATH.TOPUP(4.178,11.42,10.83,,77,,,,121,"1+20")',
      "With it, all that was poured in comes to 1+15 (6.26 %), stronger than the label allows. Label highest is 1+20 (4.76 %); the label wins.",
    ],
    ['=BATH.TOPUP(4.178,11.42,10.83,,77,,,,,"1+20")', "Volume is blank or 0; label_highest needs it."],
    [
      '=BATH.TOPUPRANGE(4.178,11.42,10.83,,77,,,,121,"1+20")',
      "With it, all that was poured in comes to 1+15 (6.26 %), stronger than the label allows. Label highest is 1+20 (4.76 %); the label wins.",
    ],
    [
      '=BATH.NEXTADD(1.39,10.83,11.2,11.42,,,,,4.178,,,121,"1+20")',
      "With it, all that was poured in comes to 1+16.4 (5.75 %), stronger than the label allows. Label highest is 1+20 (4.76 %); the label wins.",
    ],
    [
      '=BATH.TOPUPLEARNED(11.42,10.83,{1.39;0.9},{10.83;11.13},{11.13;11.33},4.178,,121,"1+20")',
      "With it, all that was poured in comes to 1+12 (7.72 %), stronger than the label allows. Label highest is 1+20 (4.76 %); the label wins.",
    ],
    [
      '=BATH.TOPUPTITRATION(4.178,8,4,,121,"1+20")',
      "With it, all that was poured in comes to 1+18.3 (5.18 %), stronger than the label allows. Label highest is 1+20 (4.76 %); the label wins.",
    ],
    ['=BATH.TOPUPTITRATION(4.178,8,6,,121,"1+20")', 1.0445],
    [
      '=BATH.DOSEATPH(4.178,11.42,11.8,"hydroxide",,,121,"1+20")',
      "With it, all that was poured in comes to 1+10.7 (8.54 %), stronger than the label allows. Label highest is 1+20 (4.76 %); the label wins.",
    ],
    [
      '=BATH.DOSE(121,"1+28","20:1")',
      "Label highest is “20:1”, more concentrate than water; the concentrate stands first: write 1+20.",
    ],
  ],
  "A dose beyond the chemistry": [
    [
      "=BATH.PHATDOSE(1,11.3,200)",
      "New dose is 200 US gal; allowed: more than 0 and at most 10 US gal. So far from the dose that gave the known pH nothing can be said.",
    ],
  ],
  "Numbers as people write them": [
    ['=BATH.DOSE("١٢٣","1+40")', 3],
    ['=BATH.DOSE("(5)","1+40")', "Volume is -5 US gal; allowed: more than 0 and at most 26417.2 US gal."],
    [
      '=BATH.DOSE("$139","1+40")',
      "Volume is “$139”, an amount of money; write a number, or a number with one of m³, L, mL, US gal, US qt, US pt, US cup, US fl oz, imperial gal, imperial qt, imperial pt, imperial fl oz, in³, ft³.",
    ],
    [
      '=BATH.DOSE(60,"139 €")',
      "Rate is “139 €”, an amount of money; write 1+40, 1 in 40 or 2.5%, or 3 fl oz/gal, 25 mL/L.",
    ],
    ['=BATH.TRIGGER("$11")', "Baseline is “$11”, an amount of money; write the number alone."],
    ['=BATH.UNITPRICE("$139","5 US gal")', 27.8],
    ['=BATH.UNITPRICE("139 €","5 US gal")', 27.8],
    ['=BATH.SHARE("US$ 100.00",{1;1})', [[50], [50]]],
    [
      '=BATH.UNITPRICE("1,500 €","5 US gal")',
      "Pack price is “1,500 €”, which could be 1.5 or 1500; write one of these.",
    ],
    ['=BATH.REORDERPOINT("$2",5,6)', "Daily use is “$2”, an amount of money; write the number alone."],
  ],
  "A short name in a sentence": [
    ['=BATH.STRENGTHOF(1,29,"ratio")', "“as” is “ratio”; write “fraction”, “%”, “parts”, “mL/L”, “fl oz/gal”."],
    [
      '=BATH.DRIFTFIX(11,"yesterday",{48;120.1},{0.02;0.14})',
      "“when” is “yesterday”, which is text; enter it as a date and time, or as a number of hours.",
    ],
    ['=BATH.UNITCONVERT(1,"furlong","m")', "“from” is “furlong”, not a known unit; BATH.UNITS() lists all."],
  ],
};

function said(formula: string): CellValue | CellMatrix {
  try {
    const answer = callFormula(formula);
    return typeof answer === "number" ? Number(answer.toPrecision(6)) : answer;
  } catch (refusal) {
    return refusal instanceof Error ? refusal.message : String(refusal);
  }
}

for (const [what, rows] of Object.entries(table)) {
  describe(what, () => {
    it.each(rows)("%s gets %j", (formula, expected) => {
      expect(said(formula)).toEqual(expected);
    });
  });
}
