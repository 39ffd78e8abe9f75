import type { GridModel } from "../gridModel.ts";

/** The texts of all cells, as an editor opens with them: a long list of which few rows are looked at. */
export interface RowsWhenAsked {
	readonly data: string[][];
	/** Begins anew: the model is another one. */
	refill(): void;
}

/** Each row of texts is filled in when it is first looked at. */
export function rowsWhenAsked(model: () => GridModel): RowsWhenAsked {
	const rows: (string[] | undefined)[] = [];
	const textsOf = (row: number) =>
		model().columns.map((_, column) => {
			const cell = model().cell(row, column);
			return cell.raw ?? cell.text;
		});
	const data = new Proxy(rows, {
		get(target, key, self) {
			const row = typeof key === "string" ? Number(key) : Number.NaN;
			if (row < target.length) target[row] ??= textsOf(row);
			return Reflect.get(target, key, self);
		},
	}) as string[][];
	const refill = () => {
		rows.length = 0;
		for (let row = 0; row < model().rowCount; row++) rows.push(undefined);
	};
	refill();
	return { data, refill };
}
