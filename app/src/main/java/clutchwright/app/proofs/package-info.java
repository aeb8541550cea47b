/// Which animal carries what, and with whom to find out. The front door is
/// [clutchwright.app.proofs.ProofsPage].
@NullMarked
package clutchwright.app.proofs;

import org.jspecify.annotations.NullMarked;
