/** A fuel with its stove: how much of its heat reaches the pot, and how much heat is in it. */
export interface Fuel {
	/** Share of the heat that reaches the pot. */
	readonly efficiency: number;
	/** MJ/kg, lower heating value; null for electricity, which is counted in kWh. */
	readonly mjPerKg: number | null;
	/** Heat that such a stove gives, kW: an estimate, for units that know neither it nor how long a pot takes. */
	readonly heatKw: number;
}

/** Starting values by fuel, from open clean-cooking data (see sources.stoves). */
export const fuelData = {
	wood_three_stone: { efficiency: 0.12, mjPerKg: 16, heatKw: 5 },
	wood_improved: { efficiency: 0.3, mjPerKg: 16, heatKw: 4 },
	wood_forced_draft: { efficiency: 0.37, mjPerKg: 16, heatKw: 4 },
	charcoal_traditional: { efficiency: 0.2, mjPerKg: 30, heatKw: 3 },
	charcoal_improved: { efficiency: 0.3, mjPerKg: 30, heatKw: 2.5 },
	kerosene: { efficiency: 0.35, mjPerKg: 43, heatKw: 1.5 },
	lpg: { efficiency: 0.5, mjPerKg: 45.5, heatKw: 2.5 },
	electric: { efficiency: 0.85, mjPerKg: null, heatKw: 1.5 },
} as const satisfies Record<string, Fuel>;

export type FuelName = keyof typeof fuelData;
export const fuelNames = Object.keys(fuelData) as [FuelName, ...FuelName[]];
