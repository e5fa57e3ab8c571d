namespace Seedfall.Engine.Validation;

/// <summary>How far predictions were from measurements, over one set of pairs; error is predicted minus observed.</summary>
/// <param name="N">Pairs, at least 1.</param>
/// <param name="Rmse">Root mean square error, in the unit of the pairs.</param>
/// <param name="Mae">Mean absolute error.</param>
/// <param name="Bias">Mean error.</param>
public sealed record ErrorSummary(int N, double Rmse, double Mae, double Bias)
{
    /// <summary>The summary of two series of equal length; throws where they differ in length or are empty.</summary>
    public static ErrorSummary Of(ReadOnlySpan<double> predicted, ReadOnlySpan<double> observed)
    {
        if (predicted.Length != observed.Length || predicted.Length == 0)
        {
            throw new ArgumentException($"two series of one length, at least 1, are needed: got {predicted.Length} and {observed.Length}", nameof(predicted));
        }

        var tally = new ErrorTally();
        for (var i = 0; i < predicted.Length; i++)
        {
            tally.Add(predicted[i], observed[i]);
        }

        return tally.Summary()!;
    }
}

/// <summary>Sums of errors, added to pair by pair and merged station by station.</summary>
public sealed class ErrorTally
{
    private int _count;
    private double _sum;
    private double _sumAbsolute;
    private double _sumSquares;

    /// <summary>Adds one pair; both must be finite.</summary>
    public void Add(double predicted, double observed)
    {
        var error = predicted - observed;
        if (!double.IsFinite(error))
        {
            throw new ArgumentOutOfRangeException(nameof(predicted), error, "finite values are needed");
        }

        _count++;
        _sum += error;
        _sumAbsolute += Math.Abs(error);
        _sumSquares += error * error;
    }

    /// <summary>Adds all pairs of another tally.</summary>
    public void Add(ErrorTally other)
    {
        _count += other._count;
        _sum += other._sum;
        _sumAbsolute += other._sumAbsolute;
        _sumSquares += other._sumSquares;
    }

    /// <summary>The summary so far; null where no pair was added.</summary>
    public ErrorSummary? Summary() => _count == 0
        ? null
        : new ErrorSummary(_count, Math.Sqrt(_sumSquares / _count), _sumAbsolute / _count, _sum / _count);
}
