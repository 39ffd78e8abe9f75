/**
 * The script that keeps the site in the browser and answers from there.
 *
 * A version is kept whole or not at all: every file must be what the build listed.
 * A newer one is kept beside it and waits until no window of the older is open, so
 * nothing changes under anyone's hands.
 */
interface Lasting extends Event {
	waitUntil(done: Promise<unknown>): void;
}
interface Asked extends Event {
	readonly request: Request;
	respondWith(answer: Promise<Response>): void;
}
interface Worker {
	readonly registration: ServiceWorkerRegistration;
	readonly clients: { claim(): Promise<void> };
	addEventListener(type: "install" | "activate", act: (event: Lasting) => void): void;
	addEventListener(type: "fetch", act: (event: Asked) => void): void;
}

/** Put in by the build: see keptFiles. */
declare const KEPT: { readonly version: string; readonly files: Readonly<Record<string, string>> };

const { version, files } = KEPT;
const worker = self as unknown as Worker;
const site = worker.registration.scope;
/** Two sites on one server, such as two languages, do not touch each other's. */
const ours = `${site}#`;
const store = `${ours}${version}`;

worker.addEventListener("install", (event) => event.waitUntil(keepAll()));
worker.addEventListener("activate", (event) => event.waitUntil(begin()));
worker.addEventListener("fetch", (event) => {
	const address = keptAddress(event.request);
	if (address !== undefined) event.respondWith(answer(address, event.request));
});

async function keepAll(): Promise<void> {
	const cache = await caches.open(store);
	const all = Object.entries(files).map(async ([file, integrity]) => {
		const address = new URL(file, site).href;
		const response = await fetch(address, { cache: "no-cache", integrity });
		// A copy, because a browser opens no page from an answer that was led elsewhere.
		const { headers } = response;
		await cache.put(address, new Response(await response.blob(), { headers }));
	});
	await Promise.all(all);
}

/** The window of the first visit is answered from here too, before it has brought every part. */
async function begin(): Promise<void> {
	await dropOlder();
	await worker.clients.claim();
}

async function dropOlder(): Promise<void> {
	for (const name of await caches.keys())
		if (name.startsWith(ours) && name !== store) await caches.delete(name);
}

/** Where a request is answered from what is kept; undefined where the server is to answer. */
function keptAddress({ method, url }: Request): string | undefined {
	const { origin, pathname } = new URL(url);
	const address = `${origin}${pathname}`;
	if (method !== "GET" || !address.startsWith(site)) return undefined;
	const file = decodeURI(address.slice(site.length)) || "index.html";
	return Object.hasOwn(files, file) ? new URL(file, site).href : undefined;
}

/** A browser short of room may have dropped what was kept; then the server is asked. */
async function answer(address: string, request: Request): Promise<Response> {
	const cache = await caches.open(store);
	return (await cache.match(address)) ?? fetch(request);
}
