/** Heads are what a person knows a draft by; the list of drafts reads no workbook. */
type StoreName = "heads" | "workbooks";
type Stores = Readonly<Record<StoreName, IDBObjectStore>>;

const NAMES: readonly StoreName[] = ["heads", "workbooks"];
let opened: Promise<IDBDatabase> | undefined;

/**
 * Acts on the drafts in this browser's database and ends when they are on the disk.
 *
 * A database and not localStorage, which browsers write to the disk seconds later:
 * a browser that is killed takes those seconds with it.
 *
 * @throws the browser's own error, where it keeps no data for this page or has no room
 */
export async function inDrafts<T>(
	mode: "readonly" | "readwrite",
	act: (stores: Stores) => IDBRequest<T>,
): Promise<T> {
	try {
		return await acted(
			(await openDatabase()).transaction(NAMES, mode, { durability: "strict" }),
			act,
		);
	} catch (error) {
		forget();
		throw error;
	}
}

function acted<T>(transaction: IDBTransaction, act: (stores: Stores) => IDBRequest<T>): Promise<T> {
	return new Promise((done, failed) => {
		const request = act({
			heads: transaction.objectStore("heads"),
			workbooks: transaction.objectStore("workbooks"),
		});
		transaction.oncomplete = () => done(request.result);
		transaction.onabort = () => failed(transaction.error);
		// Not waiting for the answers lets also the last edit through before the page goes.
		transaction.commit?.();
	});
}

function openDatabase(): Promise<IDBDatabase> {
	opened ??= new Promise<IDBDatabase>((ready, failed) => {
		const request = indexedDB.open("basinbook", 1);
		request.onupgradeneeded = () => {
			for (const name of NAMES) request.result.createObjectStore(name);
		};
		request.onsuccess = () => {
			const database = request.result;
			database.onclose = forget;
			// A newer edition of the page may want to arrange the database anew.
			database.onversionchange = () => {
				database.close();
				forget();
			};
			ready(database);
		};
		request.onerror = () => failed(request.error);
	});
	return opened;
}

/** The next draft tries again: the person may have cleared the browser's data, or let the page keep some. */
function forget(): void {
	opened = undefined;
}
