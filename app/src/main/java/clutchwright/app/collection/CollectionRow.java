package clutchwright.app.collection;

import clutchwright.app.parts.Markup;

/// One animal in the list.
///
/// @param sign of its sex; the word stands beside it for readers of text
/// @param gone whether it is no longer at hand
public record CollectionRow(
        String link,
        String id,
        String tag,
        String name,
        Markup genes,
        String sign,
        String sex,
        String hatched,
        String age,
        String place,
        String status,
        boolean gone) {}
