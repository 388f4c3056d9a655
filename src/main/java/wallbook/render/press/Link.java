package wallbook.render.press;

import wallbook.render.Tag;

/**
 * A link of the page.
 *
 * @param target address; one that begins with {@code #} is an anchor of the page
 * @param title what it leads to, in words
 * @param tag its element of the structure
 */
record Link(String target, String title, Tag tag) {}
