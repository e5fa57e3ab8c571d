using Seedfall.Engine.Numerics;

namespace Seedfall.Engine.Soil.Water;

/// <summary>What holds at an end of the column.</summary>
public enum ColumnEnd
{
    /// <summary>A pressure head, cm.</summary>
    Head,

    /// <summary>A downward flux, cm/h.</summary>
    Flux,

    /// <summary>Drainage by gravity alone; at the bottom only.</summary>
    FreeDrainage,
}

/// <summary>The condition at one end: what kind, and its value.</summary>
public readonly record struct EndCondition(ColumnEnd Kind, double Value = 0.0);

/// <summary>Water that came in at the top and left at the bottom in one step, cm.</summary>
public readonly record struct ColumnFlow(double InCm, double OutCm);

/// <summary>
/// Vertical unsaturated flow, mixed form of Richards' equation by modified Picard iteration and backward Euler: mass is kept to the
/// iteration's tolerance. Celia, Bouloutas and Zarba 1990, Water Resour. Res. 26:1483. Conductivity between cells is the arithmetic
/// mean. A reference to hold the seedbed's quick scheme against, too slow for the hour loop.
/// </summary>
public sealed class RichardsColumn
{
    private const double Tolerance = 1e-9;
    private const double MassToleranceCm = 1e-7;
    private const int MostIterations = 60;
    private const double ShortestStepH = 1e-9;

    private readonly WaterCurves _curves;
    private readonly double[] _thicknessCm;
    private readonly double[] _headCm;
    private readonly double[] _nextCm;
    private readonly double[] _oldWater;
    private readonly double[] _conductivity;
    private readonly double[] _lower;
    private readonly double[] _diagonal;
    private readonly double[] _upper;
    private readonly double[] _right;
    private readonly double[] _scratch;

    /// <summary>A column of cells from the top down; both arrays of one length of at least 2, or it throws.</summary>
    public RichardsColumn(WaterCurves curves, ReadOnlySpan<double> thicknessCm, ReadOnlySpan<double> headCm)
    {
        if (thicknessCm.Length < 2 || headCm.Length != thicknessCm.Length)
        {
            throw new ArgumentException($"two cells or more, and a head for each, are needed; got {thicknessCm.Length} and {headCm.Length}", nameof(headCm));
        }

        var n = thicknessCm.Length;
        (_curves, _thicknessCm, _headCm) = (curves, thicknessCm.ToArray(), headCm.ToArray());
        (_nextCm, _oldWater, _conductivity, _lower, _diagonal, _upper, _right, _scratch) =
            (new double[n], new double[n], new double[n], new double[n], new double[n], new double[n], new double[n], new double[n]);
    }

    /// <summary>Pressure head of each cell, cm.</summary>
    public ReadOnlySpan<double> HeadCm => _headCm;

    /// <summary>Water in the column, cm.</summary>
    public double StoredCm
    {
        get
        {
            var stored = 0.0;
            for (var i = 0; i < _headCm.Length; i++)
            {
                stored += _thicknessCm[i] * _curves.WaterContent(_headCm[i]);
            }

            return stored;
        }
    }

    /// <summary>Volumetric water of a cell, m3/m3.</summary>
    public double WaterContent(int cell) => _curves.WaterContent(_headCm[cell]);

    /// <summary>Moves one step on, cutting it in halves where the iteration does not settle.</summary>
    /// <param name="hours">Length of the step, h, above 0.</param>
    /// <param name="top">At the surface.</param>
    /// <param name="bottom">At the bottom.</param>
    /// <exception cref="InvalidOperationException">The iteration does not settle however short the step.</exception>
    public ColumnFlow Step(double hours, EndCondition top, EndCondition bottom)
    {
        if (!(hours >= ShortestStepH))
        {
            throw new InvalidOperationException($"the iteration does not settle in steps of {hours} h");
        }

        if (Settle(hours, top, bottom) is { } flow)
        {
            return flow;
        }

        var (first, second) = (Step(0.5 * hours, top, bottom), Step(0.5 * hours, top, bottom));
        return new ColumnFlow(first.InCm + second.InCm, first.OutCm + second.OutCm);
    }

    private ColumnFlow? Settle(double hours, EndCondition top, EndCondition bottom)
    {
        _headCm.CopyTo(_nextCm, 0);
        for (var i = 0; i < _headCm.Length; i++)
        {
            _oldWater[i] = _curves.WaterContent(_headCm[i]);
        }

        for (var iteration = 0; iteration < MostIterations; iteration++)
        {
            Assemble(hours, top, bottom);
            Tridiagonal.Solve(_lower, _diagonal, _upper, _right, _right, _scratch);
            var change = 0.0;
            for (var i = 0; i < _nextCm.Length; i++)
            {
                change = Math.Max(change, Math.Abs(_right[i] - _nextCm[i]) / (1.0 + Math.Abs(_nextCm[i])));
                _nextCm[i] = _right[i];
            }

            if (!double.IsFinite(change))
            {
                return null;
            }

            if (change < Tolerance)
            {
                var flow = new ColumnFlow(hours * Inflow(top), hours * Outflow(bottom));
                if (Math.Abs(Gained() - flow.InCm + flow.OutCm) > MassToleranceCm)
                {
                    return null;
                }

                _nextCm.CopyTo(_headCm, 0);
                return flow;
            }
        }

        return null;
    }

    private double Gained()
    {
        var gained = 0.0;
        for (var i = 0; i < _nextCm.Length; i++)
        {
            gained += _thicknessCm[i] * (_curves.WaterContent(_nextCm[i]) - _oldWater[i]);
        }

        return gained;
    }

    /// <summary>C (h' - h) dz/dt + (theta - theta_old) dz/dt = what flows in less what flows out, with q = K (dh/dz + 1) downward.</summary>
    private void Assemble(double hours, EndCondition top, EndCondition bottom)
    {
        var last = _nextCm.Length - 1;
        for (var i = 0; i <= last; i++)
        {
            _conductivity[i] = _curves.ConductivityCmH(_nextCm[i]);
        }

        for (var i = 0; i <= last; i++)
        {
            var store = _thicknessCm[i] / hours;
            var capacity = store * _curves.CapacityPerCm(_nextCm[i]);
            var (above, aboveRight) = i == 0 ? TopTerms(top) : (Between(i - 1), Gravity(i - 1));
            var (below, belowRight) = i == last ? BottomTerms(bottom) : (Between(i), Gravity(i));
            _lower[i] = i == 0 ? 0.0 : -above;
            _upper[i] = i == last ? 0.0 : -below;
            _diagonal[i] = capacity + above + below;
            _right[i] = (capacity * _nextCm[i]) - (store * (_curves.WaterContent(_nextCm[i]) - _oldWater[i])) + aboveRight - belowRight;
        }
    }

    private double Gravity(int i) => 0.5 * (_conductivity[i] + _conductivity[i + 1]);

    private double Between(int i) => (_conductivity[i] + _conductivity[i + 1]) / (_thicknessCm[i] + _thicknessCm[i + 1]);

    private double EndConductivity(double headCm, int cell) => 0.5 * (_curves.ConductivityCmH(headCm) + _conductivity[cell]);

    private (double PerHead, double Right) TopTerms(EndCondition top)
    {
        if (top.Kind == ColumnEnd.Flux)
        {
            return (0.0, top.Value);
        }

        var conductivity = EndConductivity(top.Value, 0);
        var perHead = 2.0 * conductivity / _thicknessCm[0];
        return (perHead, (perHead * top.Value) + conductivity);
    }

    private (double PerHead, double Right) BottomTerms(EndCondition bottom)
    {
        switch (bottom.Kind)
        {
            case ColumnEnd.Flux:
                return (0.0, bottom.Value);
            case ColumnEnd.FreeDrainage:
                return (0.0, _conductivity[^1]);
            default:
                var conductivity = EndConductivity(bottom.Value, _thicknessCm.Length - 1);
                var perHead = 2.0 * conductivity / _thicknessCm[^1];
                return (perHead, conductivity - (perHead * bottom.Value));
        }
    }

    private double Inflow(EndCondition top)
    {
        var (perHead, right) = TopTerms(top);
        return right - (perHead * _nextCm[0]);
    }

    private double Outflow(EndCondition bottom)
    {
        var (perHead, right) = BottomTerms(bottom);
        return right + (perHead * _nextCm[^1]);
    }
}
