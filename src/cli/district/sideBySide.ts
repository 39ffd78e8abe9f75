/**
 * Runs tasks side by side and hands their results on in the order of the tasks, holding no
 * more than so many at a time: a long list is gone through in little room.
 *
 * @param run never rejects
 */
export async function* sideBySide<T, R>(
	tasks: AsyncIterable<T>,
	run: (task: T) => Promise<R>,
	atOnce: number,
): AsyncGenerator<R> {
	const running: Promise<R>[] = [];
	for await (const task of tasks) {
		running.push(run(task));
		if (running.length >= atOnce) yield (await running.shift()) as R;
	}
	for (const last of running) yield await last;
}
