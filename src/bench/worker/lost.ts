/** What a person is told where a message between the page and its worker did not come. */
export const lost = 'a part of the rows was lost on the way. Nothing was changed: try again';
