/** Numbers nearer to each other than this, across and down, cannot be read. */
const [ACROSS_PX, DOWN_PX] = [40, 14];

/** Of the points of a picture those whose numbers can be written without touching one before. */
export function withRoom<T>(
	points: readonly T[],
	pxOf: (point: T) => { readonly x: number; readonly y: number },
): T[] {
	const kept: { readonly x: number; readonly y: number }[] = [];
	return points.filter((point) => {
		const { x, y } = pxOf(point);
		const touches = kept.some(
			(one) => Math.abs(one.x - x) < ACROSS_PX && Math.abs(one.y - y) < DOWN_PX,
		);
		if (!touches) kept.push({ x, y });
		return !touches;
	});
}
