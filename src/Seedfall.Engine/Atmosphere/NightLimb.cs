namespace Seedfall.Engine.Atmosphere;

/// <summary>
/// Air temperature between a sunset and the next minimum: exponential fall that ends exactly at the minimum.
/// Parton and Logan 1981, Agric. Meteorol. 23:205.
/// </summary>
internal struct NightLimb
{
    private const double Decay = 2.20;
    private static readonly double Left = Math.Exp(-Decay);

    private readonly double _baseC;
    private readonly double _perHour;
    private double _aboveBaseC;

    /// <summary>The limb from a sunset to a minimum, set to be read from an hour on.</summary>
    internal NightLimb(double sunsetHour, double sunsetC, double minimumHour, double minimumC, double fromHour)
    {
        _baseC = (minimumC - (sunsetC * Left)) / (1.0 - Left);
        var rate = Decay / Math.Max(0.5, minimumHour - sunsetHour);
        _perHour = Math.Exp(-rate);
        _aboveBaseC = (sunsetC - _baseC) * Math.Exp(-rate * (fromHour - sunsetHour));
    }

    /// <summary>Temperature at the hour reached, degC; then moves on one hour.</summary>
    internal double Next()
    {
        var celsius = _baseC + _aboveBaseC;
        _aboveBaseC *= _perHour;
        return celsius;
    }
}
