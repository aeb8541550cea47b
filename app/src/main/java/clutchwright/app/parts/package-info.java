/// What several screens draw: the two strands, a gene line in type, a pedigree, a chance as a line.
/// The front door is [clutchwright.app.parts.Strands].
@NullMarked
package clutchwright.app.parts;

import org.jspecify.annotations.NullMarked;
