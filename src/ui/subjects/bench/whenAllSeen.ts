/** A part that is seen to this share was in view. */
const SHARE = 0.9;

/**
 * Tells whether each of some parts has been in view since it was begun; a part that is
 * hidden is not asked for.
 */
export function whenAllSeen(parts: readonly HTMLElement[], told: (all: boolean) => void) {
	const unseen = new Set<Element>();
	const all = () => [...unseen].every((part) => (part as HTMLElement).hidden);
	const watch = new IntersectionObserver(
		(entries) => {
			for (const { target, intersectionRatio } of entries)
				if (intersectionRatio >= SHARE) unseen.delete(target);
			told(all());
		},
		{ threshold: [SHARE, 1] },
	);
	return {
		all,
		begin() {
			watch.disconnect();
			for (const part of parts) {
				unseen.add(part);
				watch.observe(part);
			}
			told(all());
		},
	};
}
