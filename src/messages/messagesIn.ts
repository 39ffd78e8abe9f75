import { parseSync } from "vite";

/** One text of the source that is marked with the tag `say` or `say.safety`. */
export interface Said {
	/** The message, each value in it as {0}, {1} …: "{0} kits are enough". */
	readonly message: string;
	/** Said with say.safety: a language that nobody has reviewed has the English beside it. */
	readonly isSafety: boolean;
	/** Where the tagged text begins and ends in the source. */
	readonly start: number;
	readonly end: number;
	/** The values' own places in the source, in order. */
	readonly values: readonly { readonly start: number; readonly end: number }[];
}

interface Node {
	readonly type: string;
	readonly start: number;
	readonly end: number;
	readonly [part: string]: unknown;
}

/** Every message of a TypeScript source, outermost first where one stands inside another. */
export function messagesIn(source: string, file: string): readonly Said[] {
	const { program, errors } = parseSync(file, source, { lang: "ts" });
	if (errors[0]) throw new Error(`${file}: ${errors[0].message}`);
	const found: Said[] = [];
	visit(program as unknown as Node, (node) => {
		if (node.type !== "TaggedTemplateExpression") return;
		const tag = source.slice((node.tag as Node).start, (node.tag as Node).end);
		if (tag !== "say" && tag !== "say.safety") return;
		const { quasis, expressions } = node.quasi as unknown as Template;
		const message = quasis
			.map(({ value }, at) => (at ? `{${at - 1}}` : "") + value.cooked)
			.join("");
		const isSafety = tag !== "say";
		found.push({ message, isSafety, start: node.start, end: node.end, values: expressions });
	});
	return found;
}

interface Template {
	readonly quasis: readonly { readonly value: { readonly cooked: string } }[];
	readonly expressions: readonly Node[];
}

/** Calls back for a node and everything in it, the node itself first. */
export function visit(
	node: Node,
	seen: (node: Node, parents: readonly Node[]) => void,
	parents: readonly Node[] = [],
): void {
	seen(node, parents);
	for (const part of Object.values(node).flat())
		if (isNode(part)) visit(part, seen, [node, ...parents]);
}

function isNode(part: unknown): part is Node {
	return typeof part === "object" && part !== null && typeof (part as Node).type === "string";
}
