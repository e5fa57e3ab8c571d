using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;

namespace Seedfall.Planning.Water.Coverage;

/// <summary>Rates on a 1 ft grid of cells, row by row from the south-west.</summary>
/// <param name="SouthWest">Corner of the first cell.</param>
/// <param name="CellM">Side of a cell, m.</param>
/// <param name="Columns">Cells from west to east.</param>
/// <param name="Rows">Cells from south to north.</param>
/// <param name="RateMmh">Rate at each cell's middle, mm/h.</param>
/// <param name="InPatch">True where the cell's middle lies in the patch.</param>
public sealed record DepthMap(GroundPoint SouthWest, double CellM, int Columns, int Rows, IReadOnlyList<double> RateMmh, IReadOnlyList<bool> InPatch)
{
    /// <summary>Middle of a cell.</summary>
    public GroundPoint Middle(int cell) => new(SouthWest.EastM + (CellM * ((cell % Columns) + 0.5)), SouthWest.NorthM + (CellM * ((cell / Columns) + 0.5)));
}

/// <summary>How evenly a patch is watered, and where the rest goes.</summary>
/// <param name="Map">The map.</param>
/// <param name="MeanRate">Mean rate over the patch.</param>
/// <param name="Figures">Rate, uniformities, scheduling coefficient, dry share, overspray by feature.</param>
/// <param name="Driest">Middle of the driest place; null where nothing falls on the patch.</param>
public sealed record CoverageResult(DepthMap Map, PrecipitationRate MeanRate, IReadOnlyList<Figure> Figures, GroundPoint? Driest);
