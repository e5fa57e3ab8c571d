using CsCheck;
using Seedfall.Engine.Units;
using Seedfall.Planning.Judgment.Survey;
using Seedfall.Planning.Judgment.Survey.Causes;
using Seedfall.Planning.Tests.Timing;

namespace Seedfall.Planning.Tests.Judgment.Survey;

public sealed class EvidenceTableTests
{
    private static readonly Gen<PatchSurvey> AnySurvey = Gen.Select(
        Gen.Enum<Sign>().Array[0, 8], Gen.Int[0, 6], Gen.Int[0, 6], Gen.Int[0, 6], Gen.Int[0, 20].Array[1, 5], Gen.Int[0, 2], Gen.Bool, Gen.Enum<WeatherBefore>().Array[0, 3],
        (signs, held, lifted, pulled, grubs, soil, looked, weather) => new PatchSurvey
        {
            Signs = [.. signs.Distinct()],
            LookedFromAfar = looked,
            LookedUpClose = looked,
            Tugs = new(held, lifted, pulled),
            Lifts = new(grubs, Area.FromSquareFeet(1.0)),
            Moisture = (SoilFeel)soil,
            WeatherBefore = [.. weather.Distinct()],
        });

    [Fact]
    public void EveryRowSaysSomethingAndNamesASource() => Assert.All(EvidenceTable.All, row =>
    {
        Assert.True(row.Seen != 0.0 || row.NotSeen != 0.0);
        Assert.True(row.Seen >= row.NotSeen || row.Seen < 0.0, $"{row.Cause} {row.Finding.Id}: not seeing it says more for the cause than seeing it");
        Assert.InRange(Math.Abs(row.Seen), 0.0, 3.0);
        Assert.InRange(Math.Abs(row.NotSeen), 0.0, 3.0);
        Assert.NotEmpty(row.Source);
    });

    [Fact]
    public void EveryCauseCanBeSeenAndEveryFindingSaysSomething()
    {
        Assert.All(Enum.GetValues<SuspectedCause>(), cause => Assert.True(EvidenceTable.All.Where(r => r.Cause == cause).Max(r => r.Seen) >= 1.5, $"{cause}"));
        Assert.Empty(WalkFindings.All.Concat(SignFindings.All).Where(f => EvidenceTable.All.All(r => r.Finding != f)).Select(f => f.Id));
        Assert.Equal(EvidenceTable.All.Count, EvidenceTable.All.Select(r => (r.Cause, r.Finding.Id)).Distinct().Count());
        Assert.Equal(Enum.GetValues<Sign>().Length, SignFindings.All.Count);
    }

    /// <summary>Seeing a sign never lowers a cause it speaks for, and never raises one it speaks against.</summary>
    [Fact]
    public void EvidenceForACauseNeverLowersIt() => AnySurvey.Select(Gen.Enum<Sign>()).Sample((survey, sign) =>
    {
        var before = Sums(survey with { Signs = [.. survey.Signs.Where(s => s != sign)] });
        var after = Sums(survey with { Signs = [.. survey.Signs.Where(s => s != sign), sign] });
        foreach (var cause in Enum.GetValues<SuspectedCause>())
        {
            var row = EvidenceTable.All.SingleOrDefault(r => r.Cause == cause && r.Finding == SignFindings.All.Single(f => f.Id == $"sign.{sign}"));
            var moved = after[cause] - before[cause];
            Assert.True(row is null ? Math.Abs(moved) < 1e-9 : row.Seen > 0.0 ? moved > 0.0 : moved < 0.0, $"{sign} moved {cause} by {moved}");
        }
    }, iter: 300);

    /// <summary>One grub more under every lift never makes grubs less likely.</summary>
    [Fact]
    public void MoreGrubsNeverSpeakAgainstGrubs() => AnySurvey.Sample(survey =>
    {
        var more = survey with { Lifts = survey.Lifts! with { Counts = [.. survey.Lifts.Counts.Select(c => c + 1)] } };
        return Sums(more)[SuspectedCause.Grubs] >= Sums(survey)[SuspectedCause.Grubs] - 1e-9;
    }, iter: 300);

    [Fact]
    public void SuggestionsComeWeightiestFirstAndEachCauseOnce() => AnySurvey.Sample(survey =>
    {
        var suggestions = SuggestedCauses.Of(Invented.Patch() with { Survey = survey }).Suggestions;
        Assert.Equal(suggestions.OrderByDescending(s => s.Weight.Value).Select(s => s.Cause), suggestions.Select(s => s.Cause));
        Assert.Equal(suggestions.Count, suggestions.Select(s => s.Cause).Distinct().Count());
        Assert.All(suggestions, s => Assert.NotEmpty(s.For));
    }, iter: 200);

    private static Dictionary<SuspectedCause, double> Sums(PatchSurvey survey)
    {
        var patch = SurveyedPatch.Of(Invented.Patch() with { Survey = survey });
        return Enum.GetValues<SuspectedCause>().ToDictionary(c => c, c => EvidenceTable.All.Where(r => r.Cause == c).Sum(r => r.Finding.Look(patch, survey) switch { true => r.Seen, false => r.NotSeen, null => 0.0 }));
    }
}
