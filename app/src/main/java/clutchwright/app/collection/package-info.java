/// The screen Collection: the list, the animal, its forms, and the places. The front door is
/// [clutchwright.app.collection.CollectionPage].
@org.jspecify.annotations.NullMarked
package clutchwright.app.collection;
