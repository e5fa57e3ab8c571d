namespace Seedfall.Engine.Atmosphere;

/// <summary>Sine and cosine of an angle that grows by the same step each hour, by rotation instead of a call per hour.</summary>
internal struct HourRotation
{
    private readonly double _stepSine;
    private readonly double _stepCosine;

    internal HourRotation(double startRad, double stepRad)
    {
        (Sine, Cosine) = Math.SinCos(startRad);
        (_stepSine, _stepCosine) = Math.SinCos(stepRad);
    }

    internal double Sine { get; private set; }

    internal double Cosine { get; private set; }

    internal void Next() =>
        (Sine, Cosine) = ((Sine * _stepCosine) + (Cosine * _stepSine), (Cosine * _stepCosine) - (Sine * _stepSine));
}
