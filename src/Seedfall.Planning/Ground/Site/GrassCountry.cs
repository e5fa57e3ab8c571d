using System.Globalization;
using Seedfall.Engine.Timing;
using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Plan;

namespace Seedfall.Planning.Ground;

/// <summary>Whether a climate is cool-season country, transition or warm-season country.</summary>
internal static class GrassCountry
{
    private const double WarmOptimumF = 88.0;
    private const double WarmWidthF = 12.0;
    private const double TransitionF = 75.0;
    private const double WarmF = 80.0;

    private const string Source = "growth potential, Gelernter and Stowell, optimum 68 degF (cool-season) and 88 degF (warm-season); width of the curves and the lines of 75 and 80 degF common practice, no source read";

    internal static IEnumerable<Advice> Hints(IReadOnlyList<MonthNormals> months)
    {
        var hottest = months.MaxBy(m => m.MeanC)!;
        var hottestF = Temperature.FromCelsius(hottest.MeanC).Fahrenheit;
        var growing = months.Count(m => GrowingDays.GrowthPotential(Temperature.FromCelsius(m.MeanC)) >= 0.5);
        var month = CultureInfo.InvariantCulture.DateTimeFormat.GetMonthName(hottest.Month);
        yield return new Advice("climate.country", Text(hottestF, month), Source, Sureness.CommonPractice);
        yield return new Advice(
            "climate.growth",
            string.Create(CultureInfo.InvariantCulture, $"Cool-season grass can grow at half its pace or better in {growing} months of the year; in {month} it reaches {GrowingDays.GrowthPotential(Temperature.FromCelsius(hottest.MeanC)):P0}, warm-season grass {Warm(hottestF):P0}."),
            Source,
            Sureness.CommonPractice);
    }

    private static string Text(double hottestF, string month) => hottestF switch
    {
        >= WarmF => Line(hottestF, month, "warm-season country: cool-season grass lives here only with shade, water and luck; think twice before seeding it."),
        >= TransitionF => Line(hottestF, month, "the transition zone: turf-type tall fescue stands the summer best, bluegrass in small part; fine fescues and ryegrass thin out."),
        _ => Line(hottestF, month, "cool-season country: every grass of the mix can live here; choose by sun, wear and water."),
    };

    private static string Line(double hottestF, string month, string what) => string.Create(CultureInfo.InvariantCulture, $"{month} averages {hottestF:0} degF, {what}");

    private static double Warm(double meanF) => Math.Exp(-0.5 * (meanF - WarmOptimumF) / WarmWidthF * ((meanF - WarmOptimumF) / WarmWidthF));
}
