package clutchwright.app.solver;

import clutchwright.engine.planning.IntegerProgramme;
import clutchwright.engine.planning.IntegerProgramme.Answer;
import clutchwright.engine.planning.IntegerProgramme.Effort;
import clutchwright.engine.planning.IntegerProgramme.Row;
import com.google.ortools.Loader;
import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPSolverParameters;
import com.google.ortools.linearsolver.MPVariable;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/// By SCIP's branch and cut, as OR-Tools carries it. Its native part is loaded when it is first
// asked.
public final class BranchAndCut implements IntegerProgramme.Solver {

    private static final String SCIP = "SCIP";
    private static final double MILLISECONDS = 1000;

    /// Rows are met but for so much, as solvers count.
    private static final double ALL_BUT = 1e-6;

    @Override
    public Answer solve(IntegerProgramme programme, Effort effort, Consumer<Runnable> stopping) {
        Loader.loadNativeLibraries();
        var solver = MPSolver.createSolver(SCIP);
        if (solver == null) {
            throw new IllegalStateException("the solver is not part of its library");
        }
        var stop = new Stop(solver);
        try {
            stopping.accept(stop);
            return solve(solver, programme, effort, stop);
        } finally {
            stop.isPast();
            solver.delete();
        }
    }

    /// Ends a search from another thread, and does nothing once it is over: the native solver is
    /// gone then.
    private static final class Stop implements Runnable {

        private final MPSolver solver;
        private boolean past;
        private boolean asked;

        Stop(MPSolver solver) {
            this.solver = solver;
        }

        @Override
        public synchronized void run() {
            asked = true;
            if (!past) {
                solver.interruptSolve();
            }
        }

        synchronized void isPast() {
            past = true;
        }

        synchronized boolean isAsked() {
            return asked;
        }
    }

    private static Answer solve(
            MPSolver solver, IntegerProgramme programme, Effort effort, Stop stop) {
        var variables = new ArrayList<MPVariable>();
        var objective = solver.objective();
        objective.setMaximization();
        for (var each : programme.variables()) {
            var variable = solver.makeVar(0, each.most(), each.whole(), "");
            objective.setCoefficient(variable, each.worth());
            variables.add(variable);
        }
        programme.rows().forEach(row -> add(solver, variables, row));
        solver.setTimeLimit(Math.round(effort.seconds() * MILLISECONDS));
        var parameters = new MPSolverParameters();
        parameters.setDoubleParam(MPSolverParameters.DoubleParam.RELATIVE_MIP_GAP, effort.gap());
        if (stop.isAsked()) {
            return new Answer.OutOfTime();
        }
        return switch (solver.solve(parameters)) {
            case OPTIMAL, FEASIBLE -> found(solver, variables);
            case INFEASIBLE, UNBOUNDED -> new Answer.Impossible();
            case ABNORMAL, MODEL_INVALID, NOT_SOLVED -> new Answer.OutOfTime();
        };
    }

    private static void add(MPSolver solver, List<MPVariable> variables, Row row) {
        MPConstraint constraint = solver.makeConstraint(row.least(), row.most());
        row.weights().forEach((at, weight) -> constraint.setCoefficient(variables.get(at), weight));
    }

    private static Answer found(MPSolver solver, List<MPVariable> variables) {
        var values = variables.stream().map(MPVariable::solutionValue).toList();
        var value = solver.objective().value();
        return new Answer.Found(
                values, value, Math.max(value, solver.objective().bestBound() + ALL_BUT));
    }
}
