using Seedfall.Engine.Units;

namespace Seedfall.Planning.Judgment;

/// <summary>Grubs from cup-cutter cores.</summary>
public static class GrubCount
{
    /// <summary>Ground of one 4 1/4 in core: pi d^2 / 4 = 0.0985 sq ft.</summary>
    public static Area CoreArea { get; } = Area.FromSquareFeet(Math.PI * 4.25 * 4.25 / 4.0 / 144.0);

    /// <summary>Grubs per square foot from the mean count of a core; at least ten cores, zig-zag, in August. Extension rule: times ten.</summary>
    /// <param name="meanPerCore">Mean living grubs in a core; not negative.</param>
    public static double PerSquareFoot(double meanPerCore)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(meanPerCore);
        return meanPerCore / CoreArea.SquareFeet;
    }
}
