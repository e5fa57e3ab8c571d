namespace Seedfall.Engine.Simulation.Correction;

/// <summary>What one reading did to the bias.</summary>
/// <param name="Date">Day of the reading.</param>
/// <param name="ReadC">What was read, degC.</param>
/// <param name="ModelC">The model at that depth and hour, without correction, degC.</param>
/// <param name="BeforeC">Bias expected just before the reading, degC.</param>
/// <param name="AfterC">Bias after it, degC.</param>
/// <param name="Used">False where the reading was too far off to be believed; it is shown and not used.</param>
public sealed record BiasUpdate(DateOnly Date, double ReadC, double ModelC, double BeforeC, double AfterC, bool Used);

/// <summary>
/// Slowly varying offset of a place's soil from the model, learned from readings: a fading (AR(1)) bias and a constant
/// thermometer error, by Kalman filter (Kalman 1960). A far-off reading pulls no harder than one two deviations off
/// (Huber 1964); beyond four it is left out.
/// </summary>
public sealed class SoilBias
{
    private const double RejectDeviations = 4.0;
    private const double HuberDeviations = 2.0;

    private readonly BiasSettings _settings;
    private readonly List<(DateOnly Date, Belief Belief)> _beliefs = [];
    private readonly List<BiasUpdate> _updates = [];

    private SoilBias(BiasSettings settings) => _settings = settings;

    /// <summary>Every reading, in order of date, with what it did.</summary>
    public IReadOnlyList<BiasUpdate> Updates => _updates;

    /// <summary>Learns from readings beside what the model said uncorrected; several on one day are several readings.</summary>
    public static SoilBias From(IEnumerable<(DateOnly Date, double ReadC, double ModelC)> readings, BiasSettings? settings = null)
    {
        var bias = new SoilBias(settings ?? BiasSettings.Default);
        foreach (var (date, read, model) in readings.OrderBy(r => r.Date))
        {
            bias.Learn(date, read, model);
        }

        return bias;
    }

    /// <summary>Bias to add to the model on a day from what was read up to that day, degC; 0 before the first reading.</summary>
    public double AtC(DateOnly date) => On(date).BiasC;

    /// <summary>Standard deviation of what is left of the place's offset on a day, degC.</summary>
    public double DeviationC(DateOnly date) => Math.Sqrt(On(date).BiasVariance);

    private Belief On(DateOnly date)
    {
        var last = _beliefs.FindLastIndex(b => b.Date <= date);
        return last < 0 ? Belief.Prior(_settings) : _beliefs[last].Belief.After(date.DayNumber - _beliefs[last].Date.DayNumber, _settings);
    }

    private void Learn(DateOnly date, double readC, double modelC)
    {
        var before = On(date);
        var surprise = readC - modelC - before.BiasC - before.ErrorC;
        var spread = Math.Sqrt(before.SurpriseVariance(_settings));
        var used = Math.Abs(surprise) <= RejectDeviations * Math.Sqrt(Belief.Prior(_settings).SurpriseVariance(_settings));
        var after = used ? before.Learned(Math.Clamp(surprise, -HuberDeviations * spread, HuberDeviations * spread), _settings) : before;
        _beliefs.Add((date, after));
        _updates.Add(new BiasUpdate(date, readC, modelC, before.BiasC, after.BiasC, used));
    }

    /// <summary>Means and covariance of bias and thermometer error.</summary>
    private readonly record struct Belief(double BiasC, double ErrorC, double BiasVariance, double ErrorVariance, double Covariance)
    {
        internal static Belief Prior(BiasSettings s) => new(0.0, 0.0, s.BiasC * s.BiasC, s.ThermometerC * s.ThermometerC, 0.0);

        internal double SurpriseVariance(BiasSettings s) => BiasVariance + ErrorVariance + (2.0 * Covariance) + (s.ReadingC * s.ReadingC);

        internal Belief After(int days, BiasSettings s)
        {
            var kept = Math.Exp(-days / s.FadeDays);
            return new Belief(
                kept * BiasC,
                ErrorC,
                (kept * kept * BiasVariance) + ((1.0 - (kept * kept)) * s.BiasC * s.BiasC),
                ErrorVariance,
                kept * Covariance);
        }

        internal Belief Learned(double surpriseC, BiasSettings s)
        {
            var total = SurpriseVariance(s);
            var biasGain = (BiasVariance + Covariance) / total;
            var errorGain = (ErrorVariance + Covariance) / total;
            return new Belief(
                BiasC + (biasGain * surpriseC),
                ErrorC + (errorGain * surpriseC),
                BiasVariance - (biasGain * (BiasVariance + Covariance)),
                ErrorVariance - (errorGain * (ErrorVariance + Covariance)),
                Covariance - (biasGain * (ErrorVariance + Covariance)));
        }
    }
}
