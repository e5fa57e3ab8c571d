using Seedfall.Engine.Units;

namespace Seedfall.Planning.Materials;

/// <summary>The cheapest set of bags that covers a need: an exact search.</summary>
public static class BagSearch
{
    /// <summary>
    /// Counts by offer, in the order of <paramref name="offers"/>. Cheapest where every offer has a price, else least bought;
    /// ties go to less left over, then fewer bags.
    /// </summary>
    /// <param name="need">Mass needed, above 0.</param>
    /// <param name="offers">At least one, sizes above 0.</param>
    public static IReadOnlyList<int> Cheapest(Mass need, IReadOnlyList<BagOffer> offers)
    {
        ArgumentNullException.ThrowIfNull(offers);
        if (offers.Count == 0 || offers.Any(o => !(o.Size > Mass.Zero)))
        {
            throw new ArgumentException("at least one bag size, all above 0, is needed", nameof(offers));
        }

        if (need <= Mass.Zero)
        {
            return new int[offers.Count];
        }

        var priced = offers.All(o => o.Price is not null);
        return new Search(offers, priced).Run(need);
    }

    /// <summary>Sizes as whole hundredths of a milligram: a pound is exactly 45,359,237 of them.</summary>
    private static long Whole(Mass mass) => (long)Math.Round(mass.Kilograms * 1.0e8);

    /// <summary>One bag size with its cost: money, or its own size where no prices are known.</summary>
    private readonly record struct Bag(int Offer, long Size, decimal Cost);

    private sealed class Search
    {
        private readonly Bag[] _bags;
        private readonly int[] _limits;
        private readonly int[] _counts;
        private int[] _best;
        private (decimal Cost, long Bought, int Bags) _bestScore;
        private long _need;

        internal Search(IReadOnlyList<BagOffer> offers, bool priced)
        {
            // Cheapest per mass first: the bound below is then sharp.
            _bags = [.. offers.Select((o, i) => new Bag(i, Whole(o.Size), priced ? o.Price!.Value : Whole(o.Size)))
                .OrderBy(b => b.Cost / b.Size).ThenByDescending(b => b.Size).ThenBy(b => b.Offer)];
            // As many small bags as weigh together like whole bags of the best kind are never better than those.
            _limits = [.. _bags.Select((b, i) => i == 0 ? int.MaxValue : (int)Math.Min(int.MaxValue, _bags[0].Size / Gcd(b.Size, _bags[0].Size) - 1))];
            _counts = new int[_bags.Length];
            _best = [];
        }

        internal IReadOnlyList<int> Run(Mass need)
        {
            // A sliver of a gram is not worth a bag.
            _need = Math.Max(1, Whole(need) - 1000);
            _bestScore = (decimal.MaxValue, long.MaxValue, int.MaxValue);
            Try(_bags.Length - 1, 0, 0, 0);
            var byOffer = new int[_bags.Length];
            for (var i = 0; i < _bags.Length; i++)
            {
                byOffer[_bags[i].Offer] = _best[i];
            }

            return byOffer;
        }

        private void Try(int index, decimal cost, long bought, int bags)
        {
            var bag = _bags[index];
            if (index == 0)
            {
                var last = (int)((Math.Max(0, _need - bought) + bag.Size - 1) / bag.Size);
                _counts[0] = last;
                Keep((cost + last * bag.Cost, bought + last * bag.Size, bags + last));
                return;
            }

            for (var count = 0; count <= _limits[index]; count++)
            {
                var (spent, got) = (cost + count * bag.Cost, bought + count * bag.Size);
                if (spent + Math.Max(0, _need - got) * (_bags[0].Cost / _bags[0].Size) > _bestScore.Cost)
                {
                    return;
                }

                _counts[index] = count;
                Try(index - 1, spent, got, bags + count);
                if (got >= _need)
                {
                    return;
                }
            }
        }

        private void Keep((decimal Cost, long Bought, int Bags) score)
        {
            if (score.CompareTo(_bestScore) < 0)
            {
                _bestScore = score;
                _best = [.. _counts];
            }
        }

        private static long Gcd(long a, long b) => b == 0 ? a : Gcd(b, a % b);
    }
}
