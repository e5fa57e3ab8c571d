using Seedfall.Planning.Ground;
using Seedfall.Planning.Water;
using Seedfall.Planning.Water.Coverage;
using Seedfall.Web.Forms;

namespace Seedfall.Web.Features.Coverage;

/// <summary>Places found for a sprinkler moved by hand.</summary>
public sealed record FoundPlaces(Patch Patch, MovedSprinkler Sprinkler, SuggestedPositions Places);

/// <summary>Searches for places, one lawn at a time: the solver is heavy.</summary>
internal sealed class PlacesWork : IDisposable
{
    private const string New = "new";

    private readonly SemaphoreSlim _one = new(1, 1);

    /// <summary>Null where the entries say what is wrong.</summary>
    public async Task<FoundPlaces?> Of(Lawn lawn, Entries entries, CancellationToken cancellation)
    {
        if (PlacesForm.Read(lawn, entries) is not { } asked)
        {
            return null;
        }

        await _one.WaitAsync(cancellation);
        try
        {
            var ground = new CoverageGround(asked.Outline, CoverageView.Features(lawn));
            return new(asked.Patch, asked.Sprinkler, await Task.Run(() => PositionSearch.Of(ground, asked.Sprinkler), CancellationToken.None));
        }
        catch (ArgumentException)
        {
            entries.Wrong("patch", $"{asked.Patch.Name} is too small or too far spread for a search of places.");
            return null;
        }
        finally
        {
            _one.Release();
        }
    }

    /// <summary>The lawn with the places taken as heads of a new set or of one it has, and that set's number.</summary>
    /// <param name="into">Number of the set from 1, or <c>new</c>.</param>
    public static (Lawn Lawn, int Set)? Take(Lawn lawn, FoundPlaces found, string into)
    {
        var water = lawn.Water ?? new WaterSupply();
        var heads = found.Places.Heads;
        if (into == New)
        {
            var set = new SprinklerSet { Name = Free(water.Sets, $"Moved over {found.Patch.Name}"), PatchIds = [found.Patch.Id], Flow = found.Sprinkler.Flow, Positions = heads.Count, Heads = heads };
            return (lawn with { Water = water with { Sets = [.. water.Sets, set] } }, water.Sets.Count + 1);
        }

        return int.TryParse(into, out var number) && number >= 1 && number <= water.Sets.Count
            ? (lawn with { Water = water with { Sets = [.. water.Sets.Select((s, i) => i == number - 1 ? s with { Heads = heads, Positions = heads.Count } : s)] } }, number)
            : null;
    }

    public void Dispose() => _one.Dispose();

    private static string Free(IReadOnlyList<SprinklerSet> sets, string name) =>
        Enumerable.Range(1, sets.Count + 1).Select(n => n == 1 ? name : FormattableString.Invariant($"{name} {n}")).First(n => !sets.Any(s => string.Equals(s.Name, n, StringComparison.OrdinalIgnoreCase)));
}
