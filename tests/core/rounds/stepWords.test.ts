import { expect, test } from "vitest";
import { proposedSteps } from "../../../src/core/rounds/proposedSteps.ts";
import { missingSorts } from "../../../src/core/rounds/stepWords.ts";

test("what no step is about is told where a list has any word that is known", () => {
	expect(missingSorts(["Wash in soapy water", "Soak", "Dry in the air"])).toEqual(["rinse"]);
	expect(missingSorts(["Wash", "Rinse"])).toEqual(["dry"]);
	expect(missingSorts(["Soak"])).toEqual(["wash", "rinse", "dry"]);
	expect(missingSorts(["zzz"])).toEqual([]);
});

test("soap that is rinsed off washes nothing, and is a rinse", () => {
	expect(missingSorts(["Soak", "Rinse off the soap"])).toEqual(["wash", "dry"]);
});

// methods.md 2: advice where there is "no wash, rinse or dry among the steps".
const washes = (step: string) => !missingSorts([step, "zzz"]).includes("wash");

test.each([
	"Wash in soapy water",
	"Wash every piece in soapy water",
	"Wash the pieces and your hands",
	"Wash with clean water and soap",
	"Wash with soap, rinse",
	"Rinse and wash with soapy water",
	"Rinse and wash the pieces",
	"Wash pieces in a basin",
	"Clean with a brush",
	"Clean every piece",
	"Clean bag and mask",
	"Take apart and clean",
	"Cleaning of the pieces",
	"Brush and rinse every piece",
	"Scrub narrow tips",
	"Scrub all surfaces and both sides of the mask",
	"Clean the handles",
	"Soap and water, every piece",
	"Hands washed; wash every piece",
	"Laver chaque pièce à l’eau savonneuse",
	"Laver et rincer",
	"Rincer et laver les pièces",
	"Nettoyer avec une brosse",
	"Nettoyer les pièces dans une bassine",
	"Nettoyage des pièces",
	"Brosser les embouts",
	"Se laver les mains, laver les pièces",
	"Lavar cada peça em água com sabão",
	"Limpar com escova",
	"Limpa as peças com água",
	"Limpeza das peças",
	"Lavar as peças numa bacia",
	"Ensaboar e enxaguar",
	"Enxaguar e lavar as peças",
])("%s: washes", (step) => {
	expect(washes(step)).toBe(true);
});

test.each([
	"Pour the solution away and clean up",
	"Clean-up",
	"Cleaning up the dirty side",
	"Clean the bench and the sink",
	"Dry in the air on a clean cloth, covered",
	"Clean towels laid out",
	"Put on clean gloves",
	"Rinse off the soap",
	"Rinse off the soap in plain water",
	"Rinse every piece free of soap",
	"Prepare soapy water",
	"Wash hands",
	"Wash and dry your hands",
	"Gloves off, hands washed, sterile gloves on: from here on everything is clean",
	"Wash out the buckets",
	"Rincer le savon à l’eau simple",
	"Préparer l’eau savonneuse",
	"Se laver les mains",
	"Lavage des mains",
	"Mains lavées, gants mis",
	"Mains bien lavées et sèches",
	"Essuyer le lavabo",
	"Jeter la solution et nettoyer le poste",
	"Nettoyer le côté sale",
	"Nettoyer le plan de travail",
	"Sécher sur un linge propre",
	"Ôter les gants, se laver les mains, mettre des gants stériles : à partir d’ici tout est propre",
	"Enxaguar o sabão em água simples",
	"Preparar água com sabão",
	"Lavar as mãos",
	"Deitar fora a solução e limpar o posto",
	"Limpar o lado sujo",
	"Limpar o lava-loiça",
	"Despejar no lavatório",
	"Trabalhar com as mãos bem lavadas",
	"Secar ao ar sobre um pano limpo, coberto",
	"Calçar luvas limpas",
])("%s: washes no piece", (step) => {
	expect(washes(step)).toBe(false);
});

test("of the steps proposed the washing is known by its own step alone", () => {
	const all = proposedSteps("chlorine", { soak: 20, boil: 20, steam: 20 }).map(({ step }) => step);
	expect(missingSorts(all)).toEqual([]);
	expect(missingSorts(all.filter((step) => !step.startsWith("Wash and brush")))).toEqual(["wash"]);
});
