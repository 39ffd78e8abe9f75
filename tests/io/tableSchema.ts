interface Field {
	readonly name: string;
	readonly type: string;
	readonly format?: string;
	readonly constraints?: {
		readonly required?: boolean;
		readonly minimum?: number;
		readonly maximum?: number;
		readonly maxLength?: number;
		readonly enum?: readonly string[];
	};
}

export interface Resource {
	readonly name: string;
	readonly path: string;
	readonly profile: string;
	readonly schema: {
		readonly fields: readonly Field[];
		readonly missingValues: readonly string[];
		readonly primaryKey?: readonly string[];
	};
}

/** Written from the Table Schema specification (specs.frictionlessdata.io/table-schema), not from our own code. */
const LEXICAL: Record<string, RegExp> = {
	string: /^/,
	number: /^-?(\d+(\.\d*)?|\.\d+)([eE][+-]?\d+)?$/,
	integer: /^-?\d+$/,
	date: /^\d{4}-\d{2}-\d{2}$/,
	time: /^\d{2}:\d{2}(:\d{2})?$/,
	datetime: /^\d{4}-\d{2}-\d{2}[ T]\d{2}:\d{2}/,
};

/** What a cell breaks of its field's description; undefined where nothing. */
export function breach(field: Field, cell: string): string | undefined {
	const { required, minimum, maximum, maxLength, enum: options } = field.constraints ?? {};
	const lexical = LEXICAL[field.type];
	if (!lexical) return `unknown type ${field.type}`;
	if (cell === "") return required ? "required" : undefined;
	if (!lexical.test(cell)) return field.type;
	if (minimum !== undefined && Number(cell) < minimum) return "minimum";
	if (maximum !== undefined && Number(cell) > maximum) return "maximum";
	if (maxLength !== undefined && cell.length > maxLength) return "maxLength";
	return options && !options.includes(cell) ? "enum" : undefined;
}
