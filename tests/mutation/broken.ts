import { createInstrumenter, type Instrumenter } from "@stryker-mutator/instrumenter";
import { createInjector } from "typed-inject";

interface Tag {
	readonly name?: string;
	readonly object?: { readonly name?: string };
	readonly property?: { readonly name?: string };
}

/** Words that people read are no behaviour: tests of their own and the catalogues look after them. */
const words = {
	shouldIgnore: ({ node }: { node: { type: string; tag?: Tag } }) =>
		node.type === "TaggedTemplateExpression" && isSay(node.tag)
			? "words that people read"
			: undefined,
};

/** Of say`…` and of say.safety`…`. */
function isSay({ name, object, property }: Tag = {}): boolean {
	return name === "say" || (object?.name === "say" && property?.name === "safety");
}

const quiet = new Proxy({}, { get: () => () => false });

/** These source files with every change to them built in behind a switch, and what the changes are. */
export function broken(
	files: Parameters<Instrumenter["instrument"]>[0],
): ReturnType<Instrumenter["instrument"]> {
	const instrumenter = createInjector()
		.provideValue("logger", quiet as never)
		.injectFunction(createInstrumenter as never) as Instrumenter;
	return instrumenter.instrument(files, {
		plugins: null,
		excludedMutations: [],
		ignorers: [words] as never,
	});
}
