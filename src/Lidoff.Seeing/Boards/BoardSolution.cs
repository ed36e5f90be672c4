using Lidoff.Seeing.Measuring;

namespace Lidoff.Seeing.Boards;

/// <summary>The best state of a problem: Gauss-Newton, a fixed number of rounds, steps halved until they help.</summary>
internal sealed class BoardSolution
{
    // Three would do where pictures start at their similarity; a slanted one needs some more. Later rounds no longer move anything.
    private const int Rounds = 10;
    private const int Halvings = 6;

    private double[,]? covariance;

    private BoardSolution(BoardProblem problem, BoardState state, double cost) => (Problem, State, Cost) = (problem, state, cost);

    /// <summary>What was solved.</summary>
    public BoardProblem Problem { get; }

    /// <summary>Where everything lies.</summary>
    public BoardState State { get; }

    /// <summary>Sum of the squared rests, priors included.</summary>
    public double Cost { get; }

    /// <summary>Covariance of the free numbers.</summary>
    public double[,] Covariance => covariance ??= PositiveMatrix.Inverse(PositiveMatrix.Factor(Equations(Problem, State).Matrix)
        ?? throw new InvalidOperationException("every free number is held by a prior or by sightings"));

    /// <summary>Solves from a start.</summary>
    public static BoardSolution Of(BoardProblem problem, BoardState start)
    {
        var (state, cost) = (start, Total(problem, start));
        for (var round = 0; round < Rounds; round++)
        {
            var (matrix, right) = Equations(problem, state);
            if (PositiveMatrix.Factor(matrix) is not { } factor) break;
            var step = PositiveMatrix.Solve(factor, right);
            var better = false;
            for (var (halving, times) = (0, 1.0); halving < Halvings && !better; halving++, times /= 2)
            {
                var next = problem.Moved(state, step, times);
                if (!Possible(problem, next)) continue;
                var value = Total(problem, next);
                if (!(value < cost)) continue;
                (state, cost, better) = (next, value, true);
            }

            if (!better) break;
        }

        return new(problem, state, cost);
    }

    /// <summary>Row times covariance times row.</summary>
    public double Between(BoardRow a, BoardRow b)
    {
        var sum = 0.0;
        for (var i = 0; i < a.Index.Length; i++)
        {
            for (var j = 0; j < b.Index.Length; j++) sum += a.Slope[i] * Covariance[a.Index[i], b.Index[j]] * b.Slope[j];
        }

        return sum;
    }

    private static (double[,] Matrix, double[] Right) Equations(BoardProblem problem, BoardState state)
    {
        var (matrix, right) = (new double[problem.Count, problem.Count], new double[problem.Count]);
        foreach (var row in problem.Rows(state))
        {
            for (var i = 0; i < row.Index.Length; i++)
            {
                right[row.Index[i]] += row.Slope[i] * row.Rest;
                for (var j = 0; j < row.Index.Length; j++) matrix[row.Index[i], row.Index[j]] += row.Slope[i] * row.Slope[j];
            }
        }

        return (matrix, right);
    }

    private static double Total(BoardProblem problem, BoardState state) => problem.Rows(state).Sum(row => row.Rest * row.Rest);

    // A landmark at or beyond the horizon of a picture that shows it, or a picture without extent.
    private static bool Possible(BoardProblem problem, BoardState state) =>
        problem.Sightings.All(sighting => state.Views[sighting.View].Sees(state.Places[sighting.Landmark])) && state.Views.All(view => view.PxPerMm > 1e-9);
}
