import { convolved, isWorthTransforming, transformLength } from "./convolved.ts";
import { type Counts, TAIL } from "./counts.ts";

/** Where sums are added up: room for a new list each time would cost more than the adding up. */
let room = new Float64Array(1024);
let placesRoom = new Uint32Array(1024);

/**
 * The sum of two independent counts (their convolution), as `plus` has it, in a list that the
 * next sum will write over: to be copied or added up at once.
 *
 * @param most sums beyond it are left out: the chances of all others stay as they are
 */
export function passingSum(a: Counts, b: Counts, most = Number.POSITIVE_INFINITY): Counts {
	const first = a.first + b.first;
	if (first > most) return { first: most, chance: new Float64Array(1) };
	const amounts = Math.min(a.chance.length + b.chance.length - 1, most - first + 1);
	// Use comes in packs and pieces, so many amounts in between cannot occur: those are passed over.
	const [ofA, ofB] = [possible(a), possible(b)];
	const fewer = ofA * b.chance.length <= ofB * a.chance.length;
	const [outer, inner] = fewer ? [a, b] : [b, a];
	const few = outer.chance.length > amounts ? outer.chance.subarray(0, amounts) : outer.chance;
	const many = inner.chance.length > amounts ? inner.chance.subarray(0, amounts) : inner.chance;
	const length = transformLength(few.length + many.length - 1);
	if (isWorthTransforming(ofA * ofB, length))
		return withoutTails(first, convolved(few, many, amounts, length), amounts);
	const isFull = (fewer ? ofB : ofA) > MANY * inner.chance.length;
	const chance = roomFor(amounts);
	if (isFull) multipliedOut(few, many, chance, amounts);
	else multipliedWhere(few, many, chance, amounts);
	return withoutTails(first, chance, amounts);
}

/** Where more than this part of the amounts is possible, passing over the others is not worth it. */
const MANY = 0.5;

/** So many sums at a time stay near the processor: a list of millions gone through for each of a few numbers would come from afar each time. */
const NEAR = 2048;
/** Of more numbers, those that add nothing to the sums at hand would be passed over too often. */
const FEW = 256;

function multipliedOut(
	few: Float64Array,
	many: Float64Array,
	chance: Float64Array,
	amounts: number,
): void {
	const near = few.length <= FEW ? NEAR : amounts;
	for (let from = 0; from < amounts; from += near)
		for (let i = 0; i < few.length; i++) {
			const p = few[i] as number;
			if (p === 0) continue;
			const end = Math.min(from + near, amounts, i + many.length);
			for (let sum = Math.max(from, i); sum < end; sum++)
				chance[sum] = (chance[sum] as number) + p * (many[sum - i] as number);
		}
}

function multipliedWhere(
	few: Float64Array,
	many: Float64Array,
	chance: Float64Array,
	amounts: number,
): void {
	let within = placesOf(many);
	const places = placesRoom;
	for (let i = 0; i < few.length; i++) {
		const p = few[i] as number;
		if (p === 0) continue;
		while (within > 0 && i + (places[within - 1] as number) >= amounts) within--;
		for (let place = 0; place < within; place++) {
			const j = places[place] as number;
			chance[i + j] = (chance[i + j] as number) + p * (many[j] as number);
		}
	}
}

/** So many amounts, none of them possible yet. */
function roomFor(amounts: number): Float64Array {
	if (room.length < amounts) room = new Float64Array(2 * amounts);
	else room.fill(0, 0, amounts);
	return room;
}

/** Writes down the places of what is possible. */
function placesOf(chance: Float64Array): number {
	if (placesRoom.length < chance.length) placesRoom = new Uint32Array(2 * chance.length);
	let count = 0;
	for (let i = 0; i < chance.length; i++) if (chance[i] !== 0) placesRoom[count++] = i;
	return count;
}

/** How many numbers a count can come to. */
function possible({ chance }: Counts): number {
	let numbers = 0;
	for (let i = 0; i < chance.length; i++) if (chance[i] !== 0) numbers++;
	return numbers;
}

/**
 * Far below what is cut off. Chances that went on shrinking would come to numbers so small
 * (denormal) that a processor takes a hundred times as long for each.
 */
const NONE = TAIL * 1e-17;

/** Cuts off both ends where their chances cannot be seen in any result. */
export function withoutTails(first: number, chance: Float64Array, amounts: number): Counts {
	const cut = TAIL * 1e-3;
	for (let i = 0; i < amounts; i++) if ((chance[i] as number) < NONE) chance[i] = 0;
	let from = 0;
	let to = amounts;
	for (let sum = chance[from] as number; from < to - 1 && sum < cut; )
		sum += chance[++from] as number;
	for (let sum = chance[to - 1] as number; to > from + 1 && sum < cut; )
		sum += chance[--to - 1] as number;
	return { first: first + from, chance: chance.subarray(from, to) };
}
