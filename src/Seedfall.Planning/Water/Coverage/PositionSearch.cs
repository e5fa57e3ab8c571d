using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;

namespace Seedfall.Planning.Water.Coverage;

/// <summary>A hose-end sprinkler to be set down at several places, one after another.</summary>
/// <param name="Throw">Radius it reaches.</param>
/// <param name="Flow">What it puts out on this hose.</param>
/// <param name="Profile">How its depth falls off.</param>
/// <param name="Arcs">Arcs it can be set to: direction it begins and degrees it sweeps.</param>
public sealed record MovedSprinkler(Length Throw, FlowRate Flow, SprayProfile Profile, IReadOnlyList<(double FromDeg, double SweepDeg)> Arcs);

/// <summary>Suggested places for a moved sprinkler.</summary>
/// <param name="Heads">Where to set it down, and its arc there; from south to north, then west to east.</param>
/// <param name="Fewest">No choice among the places tried can do with fewer.</param>
/// <param name="Unreached">Share of the patch that no place reaches.</param>
/// <param name="Proven">True where the number is proved to be the least.</param>
public sealed record SuggestedPositions(IReadOnlyList<CoverageHead> Heads, Figure Fewest, Figure Unreached, bool Proven);

/// <summary>Fewest places from which a moved sprinkler waters a patch.</summary>
public static class PositionSearch
{
    /// <summary>
    /// A place waters a cell where its own rate there is at least half its mean over its arc; so a triangular profile counts to 5/6 of
    /// the throw. Assumed.
    /// </summary>
    internal const double LeastOverMean = 0.5;

    /// <summary>Most cells and places looked at; the grid is made coarser until both hold.</summary>
    private const int MostCells = 900;

    private const int MostPlaces = 500;

    /// <summary>
    /// Set cover over a grid of places on the patch: fewest places, then least water off the patch. Places stand on the patch itself.
    /// </summary>
    /// <param name="ground">The patch and what lies about it.</param>
    /// <param name="sprinkler">The sprinkler.</param>
    public static SuggestedPositions Of(CoverageGround ground, MovedSprinkler sprinkler)
    {
        ArgumentNullException.ThrowIfNull(ground);
        ArgumentNullException.ThrowIfNull(sprinkler);
        if (sprinkler.Arcs.Count == 0)
        {
            throw new ArgumentException("at least one arc is needed", nameof(sprinkler));
        }

        CoverageDoor.Check([.. sprinkler.Arcs.Select(arc => Head(sprinkler, ground.Corners[0], arc))], ground);
        var cells = Points(ground, MostCells);
        if (cells.Count == 0)
        {
            throw new ArgumentException("the patch covers no cell of the 1 ft grid", nameof(ground));
        }

        var heads = Points(ground, MostPlaces / sprinkler.Arcs.Count).SelectMany(at => sprinkler.Arcs, (at, arc) => Head(sprinkler, at, arc)).ToArray();
        var places = heads.Select(head => Place(head, cells)).ToArray();
        var reached = Enumerable.Range(0, cells.Count).Where(cell => places.Any(place => place.Covers[cell])).ToArray();
        var cover = SetCover.Fewest([.. places.Select(place => (IReadOnlyList<bool>)[.. reached.Select(cell => place.Covers[cell])])], [.. places.Select(place => place.OffPatch)]);
        var working = new Working(
            "fewest places whose patterns, each counted where it gives half its mean or more, together cover every cell",
            [new("p", "places tried", heads.Length, ""), new("c", "cells to cover", reached.Length, "")],
            "set cover; half the mean assumed",
            Sureness.Computed,
            "Grid of places on the patch: a place between two grid points may do with one fewer. Move it to suit, and set out cans.");
        return new SuggestedPositions(
            [.. cover.Chosen.Select(k => heads[k]).OrderBy(h => h.At.NorthM).ThenBy(h => h.At.EastM)],
            new Figure("water.positions.fewest", "No fewer places can do", QuantityKind.Count, cover.Bound, working),
            new Figure("water.positions.unreached", "Ground no place reaches", QuantityKind.Share, 1.0 - (reached.Length / (double)cells.Count), working),
            cover.Chosen.Count == cover.Bound);
    }

    private static CoverageHead Head(MovedSprinkler sprinkler, GroundPoint at, (double FromDeg, double SweepDeg) arc) =>
        new(at, sprinkler.Throw, sprinkler.Flow, sprinkler.Profile) { ArcFromDeg = arc.FromDeg, ArcDeg = arc.SweepDeg };

    /// <summary>Cells a head covers, and its pattern's share, in thousandths, that covers none.</summary>
    private static (bool[] Covers, int OffPatch) Place(CoverageHead head, IReadOnlyList<GroundPoint> cells)
    {
        var pattern = new SprayPattern(head, SprayWind.Still);
        var areaM2 = Math.PI * head.Throw.Meters * head.Throw.Meters * head.ArcDeg / 360.0;
        var leastMmh = LeastOverMean * pattern.LandedLph / areaM2;
        var rates = cells.Select(pattern.RateMmh).ToArray();
        var cellM2 = cells.Count > 1 ? SpacingM2(cells) : areaM2;
        return ([.. rates.Select(rate => rate >= leastMmh)], (int)Math.Round(1000.0 * Math.Max(0.0, 1.0 - (rates.Sum() * cellM2 / pattern.LandedLph))));
    }

    private static double SpacingM2(IReadOnlyList<GroundPoint> cells)
    {
        var stepM = cells.Skip(1).Select(c => Math.Max(Math.Abs(c.EastM - cells[0].EastM), Math.Abs(c.NorthM - cells[0].NorthM))).Min();
        return stepM * stepM;
    }

    /// <summary>Middles of the patch's cells on the finest whole-foot grid with no more than so many.</summary>
    private static IReadOnlyList<GroundPoint> Points(CoverageGround ground, int most)
    {
        var ring = ground.Corners;
        var (westM, southM) = (ring.Min(p => p.EastM), ring.Min(p => p.NorthM));
        var (eastM, northM) = (ring.Max(p => p.EastM), ring.Max(p => p.NorthM));
        var areaM2 = (eastM - westM) * (northM - southM);
        for (var feet = Math.Max(1, (int)Math.Sqrt(areaM2 / Area.FromSquareFeet(1.0).SquareMeters / most / 4.0)); ; feet++)
        {
            var stepM = Length.FromFeet(feet).Meters;
            var points = new List<GroundPoint>();
            for (var north = southM + (stepM / 2.0); north < northM && points.Count <= most; north += stepM)
            {
                for (var east = westM + (stepM / 2.0); east < eastM; east += stepM)
                {
                    if (ground.At(new GroundPoint(east, north)) == CoverageGround.InPatch)
                    {
                        points.Add(new GroundPoint(east, north));
                    }
                }
            }

            if (points.Count <= most)
            {
                return points;
            }
        }
    }
}
