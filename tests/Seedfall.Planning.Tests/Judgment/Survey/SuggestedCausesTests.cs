using Seedfall.Engine.Units;
using Seedfall.Planning.Judgment.Survey;
using Seedfall.Planning.Judgment.Survey.Causes;
using Seedfall.Planning.Tests.Timing;

namespace Seedfall.Planning.Tests.Judgment.Survey;

public sealed class SuggestedCausesTests
{
    private static readonly PatchSurvey LookedAll = new() { LookedFromAfar = true, LookedUpClose = true, LookedForWeeds = true };

    // The classic pictures of the trade's diagnosis keys: common practice, no source read.
    private static readonly Dictionary<SuspectedCause, PatchSurvey> Pictures = new()
    {
        [SuspectedCause.Grubs] = LookedAll with { Tugs = new(0, 5, 1), Lifts = new([9, 12, 8, 10], Area.FromSquareFeet(1.0)), Signs = [Sign.Digging], Moisture = SoilFeel.Moist },
        [SuspectedCause.Drought] = LookedAll with { WeatherBefore = [WeatherBefore.HotDry], Tugs = new(6, 0, 0), Moisture = SoilFeel.Dry, Signs = [Sign.BlueGrayFootprints, Sign.WorstInSun], Began = Onset.Weeks },
        [SuspectedCause.BrownPatch] = LookedAll with { WeatherBefore = [WeatherBefore.HotHumid], Signs = [Sign.RoundPatches, Sign.BrownEdgedBlotches, Sign.SmokeRing], Began = Onset.Days },
        [SuspectedCause.DollarSpot] = LookedAll with { WeatherBefore = [WeatherBefore.MildDewy], Signs = [Sign.SmallSpots, Sign.HourglassLesions, Sign.CottonyMornings] },
        [SuspectedCause.PythiumBlight] = LookedAll with { WeatherBefore = [WeatherBefore.HotHumid], Signs = [Sign.GreasyBlades, Sign.CottonyMornings, Sign.StandingWater], Began = Onset.Days, Moisture = SoilFeel.Wet },
        [SuspectedCause.SnowMold] = LookedAll with { Began = Onset.AfterWinter, WeatherBefore = [WeatherBefore.LongSnow], Signs = [Sign.SnowMats, Sign.RoundPatches] },
        [SuspectedCause.FairyRing] = LookedAll with { Signs = [Sign.Rings], Began = Onset.Years },
        [SuspectedCause.SodWebworms] = LookedAll with { Signs = [Sign.Moths, Sign.GreenPellets, Sign.CaterpillarsFlushed] },
        [SuspectedCause.ChinchBugs] = LookedAll with { Signs = [Sign.ChinchBugsFloated, Sign.WorstInSun], WeatherBefore = [WeatherBefore.HotDry], Moisture = SoilFeel.Moist },
        [SuspectedCause.Billbugs] = LookedAll with { Signs = [Sign.SawdustStems], Tugs = new(1, 0, 5) },
        [SuspectedCause.Shade] = LookedAll with { SunHours = 2.0, Signs = [Sign.WorstInShade, Sign.MossOrSlime], Began = Onset.Years },
        [SuspectedCause.Compaction] = LookedAll with { Pushes = [Depth.FromInches(2.0), Depth.FromInches(2.5)], Moisture = SoilFeel.Moist, Weeds = [new(WeedKind.PackedGround, null)] },
        [SuspectedCause.Wear] = LookedAll with { Signs = [Sign.TrafficLines] },
        [SuspectedCause.DogSpots] = LookedAll with { Signs = [Sign.DarkRim, Sign.SmallSpots] },
        [SuspectedCause.BurnOrSpill] = LookedAll with { Signs = [Sign.Stripes], PutOn = [PutOn.Fertilizer], Began = Onset.Days },
        [SuspectedCause.Scalping] = LookedAll with { Signs = [Sign.Scalped], Mown = Depth.FromInches(1.5) },
        [SuspectedCause.WaterRepellentSoil] = LookedAll with { DropStood = true, Moisture = SoilFeel.Dry },
        [SuspectedCause.Salt] = LookedAll with { Signs = [Sign.AlongPaving, Sign.SaltOrPlowedSnow], PutOn = [PutOn.Deicer], Began = Onset.AfterWinter },
        [SuspectedCause.Thatch] = LookedAll with { Thatch = [Depth.FromInches(1.1)] },
        [SuspectedCause.Hunger] = LookedAll with { Signs = [Sign.PaleAllOver], Weeds = [new(WeedKind.Clover, Fraction.Of(0.2))], Began = Onset.Years },
    };

    public static TheoryData<SuspectedCause> Classics => [.. Pictures.Keys];

    [Theory]
    [MemberData(nameof(Classics))]
    public void TheClassicPictureIsSuggestedFirst(SuspectedCause cause)
    {
        var first = Suggest(Pictures[cause]).Suggestions[0];
        Assert.Equal(cause, first.Cause);
        Assert.True(first.Standing is CauseStanding.PointsTo or CauseStanding.PointsStrongly, first.Sentence);
    }

    [Fact]
    public void NothingSeenSuggestsNothingAndNamesAStep()
    {
        var report = Suggest(new PatchSurvey());
        Assert.Empty(report.Suggestions);
        Assert.Empty(report.SpokenAgainst);
        Assert.NotNull(report.Next);
    }

    [Fact]
    public void EverySuggestionRestsOnSomethingSeenAndSaysHowToConfirm() =>
        Assert.All(Pictures.Values.SelectMany(survey => Suggest(survey).Suggestions), s =>
        {
            Assert.NotEmpty(s.For);
            Assert.All(s.For, line => Assert.True(line.Weight > 0.0));
            Assert.All(s.Against, line => Assert.True(line.Weight < 0.0));
            Assert.EndsWith(".", s.Facts.Confirm, StringComparison.Ordinal);
            Assert.EndsWith(".", s.Facts.Meanwhile, StringComparison.Ordinal);
            Assert.Equal(s.Weight.Value, s.For.Concat(s.Against).Sum(l => l.Weight), 6);
        });

    [Fact]
    public void SeveralCausesMayHoldAtOnce()
    {
        var causes = Suggest(LookedAll with { Signs = [Sign.DarkRim, Sign.TrafficLines], Thatch = [Depth.FromInches(1.0)] }).Suggestions.Select(s => s.Cause).ToArray();
        Assert.Contains(SuspectedCause.DogSpots, causes);
        Assert.Contains(SuspectedCause.Wear, causes);
        Assert.Contains(SuspectedCause.Thatch, causes);
    }

    [Fact]
    public void AContradictionIsSaid()
    {
        var grubs = Suggest(LookedAll with { Tugs = new(0, 6, 0), Lifts = new([0, 0, 0, 0], Area.FromSquareFeet(1.0)) }).Suggestions.Single(s => s.Cause == SuspectedCause.Grubs);
        Assert.Equal(CauseStanding.Contradicts, grubs.Standing);
        Assert.Contains("contradicts itself", grubs.Sentence, StringComparison.Ordinal);
        Assert.NotEmpty(grubs.For);
        Assert.NotEmpty(grubs.Against);
    }

    [Fact]
    public void WhatWasLookedForAndNotSeenSpeaksAgainst()
    {
        var open = Suggest(new PatchSurvey { WeatherBefore = [WeatherBefore.HotHumid], Began = Onset.Days }).Suggestions.Single(s => s.Cause == SuspectedCause.BrownPatch);
        var looked = Suggest(LookedAll with { WeatherBefore = [WeatherBefore.HotHumid], Began = Onset.Days }).Suggestions.Single(s => s.Cause == SuspectedCause.BrownPatch);
        Assert.Empty(open.Against);
        Assert.NotEmpty(looked.Against);
        Assert.True(looked.Weight.Value < open.Weight.Value);
    }

    [Fact]
    public void DrySoilExcusesAShallowPush()
    {
        var dry = Suggest(new PatchSurvey { Pushes = [Depth.FromInches(2.0)], Moisture = SoilFeel.Dry });
        var moist = Suggest(new PatchSurvey { Pushes = [Depth.FromInches(2.0)], Moisture = SoilFeel.Moist });
        Assert.DoesNotContain(dry.Suggestions, s => s.Cause == SuspectedCause.Compaction);
        Assert.Contains(moist.Suggestions, s => s.Cause == SuspectedCause.Compaction);
    }

    [Fact]
    public void TheNextStepIsTheTellingOne()
    {
        Assert.Equal(WalkStep.Lift, Suggest(LookedAll with { Signs = [Sign.Digging], Tugs = new(0, 6, 0), Thatch = [Depth.FromInches(0.2)], Moisture = SoilFeel.Moist, Pushes = [Depth.FromInches(6.0)] }).Next!.Step);
        Assert.Equal(WalkStep.Lift, Suggest(LookedAll with { Tugs = new(0, 6, 0), Lifts = new([6], Area.FromSquareFeet(1.0)), Moisture = SoilFeel.Moist, Pushes = [Depth.FromInches(6.0)], Thatch = [Depth.FromInches(0.2)] }).Next!.Step);
    }

    [Fact]
    public void ASprayIsNeverNearWithoutItsCautions()
    {
        Assert.All(Enum.GetValues<SuspectedCause>(), cause => Assert.True(CauseFacts.Of(cause).Name.Length > 3));
        var sprayed = Pictures.Values.SelectMany(survey => Suggest(survey).Suggestions).ToArray();
        Assert.Contains(sprayed, s => s.Facts.Treatment == Treatment.Fungicide);
        Assert.Contains(sprayed, s => s.Facts.Treatment == Treatment.Insecticide);
        Assert.All(sprayed, s => Assert.Equal(s.Facts.Treatment != Treatment.None, s.Cautions.Any(c => c.Id == "caution.identify") && s.Cautions.Any(c => c.Id == "caution.label")));
    }

    private static CauseReport Suggest(PatchSurvey survey) => SuggestedCauses.Of(Invented.Patch() with { Survey = survey, SunHours = survey.SunHours });
}
