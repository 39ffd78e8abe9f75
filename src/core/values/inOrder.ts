/** Below 0 where one text or number comes before the other, 0 where they are the same: in any language, on any machine. */
export function inOrder<T extends string | number>(one: T, other: T): number {
	return one < other ? -1 : one > other ? 1 : 0;
}
