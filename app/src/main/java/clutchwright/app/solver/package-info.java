/// Solves the engine's integer programmes with a library. The front door is
/// [clutchwright.app.solver.BranchAndCut].
@NullMarked
package clutchwright.app.solver;

import org.jspecify.annotations.NullMarked;
