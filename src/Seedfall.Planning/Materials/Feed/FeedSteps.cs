using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Rules;

namespace Seedfall.Planning.Materials;

/// <summary>The three feedings of a recovery.</summary>
internal static class FeedSteps
{
    private const double FirstPounds = 1.0;
    private const double SecondPounds = 0.5;
    private const double LatePounds = 1.0;
    private const int SecondAfterDays = 15;

    internal static (IReadOnlyList<FeedStep> Steps, IReadOnlyList<Assumption> Assumed) Of(Lawn lawn, RulePack pack, SeedingWork work, DateOnly seedDown, DateOnly lateFeed)
    {
        var generic = StarterChoice.For(pack.Phosphorus, work, lawn.Soil, seedDown);
        var starter = lawn.Starter ?? generic.Product;
        var late = lawn.LateFeed ?? StarterChoice.Late;
        var assumed = new List<Assumption>();
        if (lawn.Starter is null)
        {
            assumed.Add(StarterChoice.Assumed("starter", "Starter fertilizer", starter, generic.Why));
        }

        if (lawn.LateFeed is null)
        {
            assumed.Add(StarterChoice.Assumed("late", "Late-fall feed", late, null));
        }

        return (
            [
                new("starter-1", "Starter at seed-down", starter, lawn.Starter is not null, seedDown, 0, FirstPounds, "On top of the seed, for the seedlings and the grass that lives.", "K-State Research and Extension: about 1 lb N per 1,000 sq ft at seeding"),
                new("starter-2", "Second starter", starter, lawn.Starter is not null, seedDown.AddDays(SecondAfterDays), SecondAfterDays, SecondPounds, "When seedlings have used up the seed.", Worked.Practice),
                new("late-fall", "Late-fall feed", late, lawn.LateFeed is not null, lateFeed, null, LatePounds, "When top growth slows but the grass is still green: it goes into roots and crowns.", Worked.Practice),
            ],
            assumed);
    }
}
