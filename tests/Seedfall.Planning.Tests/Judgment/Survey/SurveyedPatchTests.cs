using Seedfall.Engine.Units;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Judgment;
using Seedfall.Planning.Judgment.Survey;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Tests.Timing;

namespace Seedfall.Planning.Tests.Judgment.Survey;

public sealed class SurveyedPatchTests
{
    [Fact]
    public void WhatWasMeasuredWinsAndTheRestStays()
    {
        var entered = Invented.Patch() with { LivingCover = Fraction.Of(0.7), Thatch = Depth.FromInches(1.0), GrubsPerSquareFoot = 9.0, WeedCover = Fraction.Of(0.1) };
        var walked = SurveyedPatch.Of(entered with { Survey = new PatchSurvey { Quadrats = [new(50, 20)], Lifts = new([0, 1], Area.FromSquareFeet(1.0)) } });
        Assert.Equal(0.4, walked.LivingCover!.Value.Value, 1e-12);
        Assert.Equal(0.5, walked.GrubsPerSquareFoot!.Value, 1e-12);
        Assert.Equal(1.0, walked.Thatch!.Value.Inches, 1e-12);
        Assert.Equal(0.1, walked.WeedCover!.Value.Value, 1e-12);
        Assert.Equal(entered, SurveyedPatch.Of(entered));
    }

    [Theory]
    [InlineData(5, 0, 1, null, true)]
    [InlineData(5, 0, 1, SoilFeel.Dry, true)]
    [InlineData(5, 0, 1, SoilFeel.Wet, null)]
    [InlineData(0, 2, 3, null, false)]
    [InlineData(3, 3, 0, null, null)]
    [InlineData(2, 0, 0, null, null)]
    public void DormancyFollowsTheTufts(int held, int lifted, int pulled, SoilFeel? soil, bool? expected) =>
        Assert.Equal(expected, SurveyedPatch.Dormant(new PatchSurvey { Tugs = new(held, lifted, pulled), Moisture = soil }));

    [Fact]
    public void TheCoverFigureCarriesItsRange()
    {
        var lawn = Invented.Lawn(null, Invented.Patch() with { Survey = new PatchSurvey { Quadrats = [new(25, 8), new(25, 12)] } });
        var figure = PatchGround.Summarize(lawn).Value![0].LivingCover;
        Assert.Equal(0.4, figure.Value, 1e-12);
        Assert.Contains(figure.Working.Inputs, i => i.Symbol == "low");
        Assert.Contains("90 % range", figure.Working.Note, StringComparison.Ordinal);
        Assert.DoesNotContain(PatchGround.Summarize(lawn).Assumptions, a => a.Id.EndsWith(".cover", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(9, VerdictKind.CureFirst)]
    [InlineData(0, VerdictKind.Recover)]
    public void TheVerdictHearsTheGrubs(int each, VerdictKind expected)
    {
        var verdict = Judge(new PatchSurvey { Lifts = new([each, each, each], Area.FromSquareFeet(1.0)) });
        Assert.Equal(expected, verdict.Kind);
        if (expected == VerdictKind.CureFirst)
        {
            Assert.Contains("90 % range", verdict.Reasons[0].Figure!.Working.Note, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void TheVerdictHearsTheThatchAndTheCover()
    {
        Assert.Equal(VerdictKind.CureFirst, Judge(new PatchSurvey { Thatch = [Depth.FromInches(0.9), Depth.FromInches(0.8)] }).Kind);
        Assert.Equal(VerdictKind.StartOver, Judge(new PatchSurvey { Quadrats = [new(50, 10), new(50, 12)] }).Kind);
        Assert.Equal(VerdictKind.Wait, Judge(new PatchSurvey { Tugs = new(6, 0, 0), Moisture = SoilFeel.Dry }).Kind);
    }

    [Fact]
    public void ASuggestionNeverBecomesTheCause() =>
        Assert.Equal(DamageCause.Unknown, SurveyedPatch.Of(Invented.Patch() with { Cause = DamageCause.Unknown, Survey = new PatchSurvey { Signs = [Sign.DarkRim], LookedUpClose = true } }).Cause);

    private static readonly Dictionary<string, PatchSurvey> Wrong = new()
    {
        ["patches[0].survey.quadrats[0].living"] = new() { Quadrats = [new(25, 26)] },
        ["patches[0].survey.quadrats[0].weeds"] = new() { Quadrats = [new(25, 20, 6)] },
        ["patches[0].survey.quadrats[0]"] = new() { Quadrats = [new(null, null)] },
        ["patches[0].survey.quadrats[0] (2)"] = new() { Quadrats = [new(25, 5, null, Fraction.Of(0.2))] },
        ["patches[0].survey.quadrats[0].living (2)"] = new() { Quadrats = [new(25, null)] },
        ["patches[0].survey.quadrats[0].living (3)"] = new() { Quadrats = [new(25, -1)] },
        ["patches[0].survey.quadrats"] = new() { Quadrats = [.. Enumerable.Repeat(new Quadrat(25, 5), 61)] },
        ["patches[0].survey.tugs.held"] = new() { Tugs = new(-1, 0, 0) },
        ["patches[0].survey.lifts.counts[1]"] = new() { Lifts = new([1, 900], Area.FromSquareFeet(1.0)) },
        ["patches[0].survey.lifts.ground"] = new() { Lifts = new([1], Area.Zero) },
        ["patches[0].survey.pushes[0]"] = new() { Pushes = [Depth.FromMillimeters(-5.0)] },
        ["patches[0].survey.thatch[0]"] = new() { Thatch = [Depth.FromInches(40.0)] },
        ["patches[0].survey.mown"] = new() { Mown = Depth.FromInches(40.0) },
        ["patches[0].survey.sun"] = new() { SunHours = 25.0 },
        ["patches[0].survey.signs[1]"] = new() { Signs = [Sign.Rings, Sign.Rings] },
        ["patches[0].survey.weeds"] = new() { Weeds = [new(WeedKind.Clover, Fraction.Of(0.6)), new(WeedKind.Sedge, Fraction.Of(0.6))] },
        ["patches[0].survey.weeds[1].kind"] = new() { Weeds = [new(WeedKind.Clover, null), new(WeedKind.Clover, null)] },
    };

    public static TheoryData<string> Absurd => [.. Wrong.Keys];

    [Theory]
    [MemberData(nameof(Absurd))]
    public void WhatCannotBeIsNamed(string path) =>
        Assert.Equal(path.Split(' ')[0], Assert.Single(LawnRules.Problems(Invented.Lawn(null, Invented.Patch() with { Survey = Wrong[path] }))).Path);

    private static Verdict Judge(PatchSurvey survey)
    {
        var lawn = Invented.Lawn(null, Invented.Patch() with { Survey = survey });
        return LawnVerdict.Judge(lawn, new Choices { Season = 2023 }, Invented.Summaries(lawn), Invented.Time(Invented.Weather).Value!, null, null, Invented.Tables);
    }
}
