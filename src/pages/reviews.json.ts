import reviews from "../messages/reviews.json";

/** Which translations have been reviewed, by whom, and what is in doubt. */
export const GET = () => new Response(`${JSON.stringify(reviews, null, "\t")}\n`);
