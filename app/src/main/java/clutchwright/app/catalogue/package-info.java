/// What is known of the species: loci with all their forms, the keeper's own genes, and the reading
/// back of gene lines while they are typed. The front door is
/// [clutchwright.app.catalogue.ReadingPage].
@NullMarked
package clutchwright.app.catalogue;

import org.jspecify.annotations.NullMarked;
