import { say } from "../say.ts";

/** What every calculation of fires takes: stoves and pots, and what one of them does with the water. */
export const onTheFire = {
	stoves: { label: say`Stoves for boiling water`, unit: say`stoves`, min: 1 },
	pots: { label: say`Pots for boiled water`, unit: say`pots`, min: 1 },
	potsOnStove: { label: say`Pots on a stove at once`, unit: say`pots`, min: 1 },
	potLitres: { label: say`Water in a pot`, unit: "L", min: 1e-3 },
	netKw: { label: say`Heat that reaches the water`, unit: "kW", min: 1e-6 },
	drawnC: { label: say`Temperature of the water drawn`, unit: "°C" },
	boilingC: { label: say`Boiling point`, unit: "°C" },
	holdMinutes: { label: say`Keep at the boil for`, unit: "min", min: 0 },
	coolMinutes: { label: say`Cooling`, unit: "min", min: 0 },
} as const;
