namespace Seedfall.Engine.Atmosphere;

/// <summary>
/// Air temperature between a sunset and the next minimum: exponential fall that ends exactly at the minimum.
/// Parton and Logan 1981, Agric. Meteorol. 23:205.
/// </summary>
internal readonly struct NightLimb
{
    private const double Decay = 2.20;

    private readonly double _baseC;
    private readonly double _fallC;
    private readonly double _perHour;
    private readonly double _sunsetHour;

    internal NightLimb(double sunsetHour, double sunsetC, double minimumHour, double minimumC)
    {
        var left = Math.Exp(-Decay);
        _sunsetHour = sunsetHour;
        _baseC = (minimumC - (sunsetC * left)) / (1.0 - left);
        _fallC = sunsetC - _baseC;
        _perHour = Decay / Math.Max(0.5, minimumHour - sunsetHour);
    }

    internal double At(double hour) => _baseC + (_fallC * Math.Exp(-_perHour * (hour - _sunsetHour)));
}
