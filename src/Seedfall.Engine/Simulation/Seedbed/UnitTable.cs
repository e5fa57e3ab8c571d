using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using Seedfall.Engine.Numerics;
using Lanes = System.Runtime.Intrinsics.Vector256<double>;

namespace Seedfall.Engine.Simulation.Seedbed;

/// <summary>A smooth function on [0, 1] tabulated for the hour loop; linear between 512 points.</summary>
internal sealed class UnitTable
{
    /// <summary>A power of two less one, so that a place masked by it always lies inside.</summary>
    private const int Intervals = 511;

    private readonly double[] _values = new double[Intervals + 2];

    internal UnitTable(Func<double, double> function)
    {
        for (var i = 0; i <= Intervals; i++)
        {
            _values[i] = function((double)i / Intervals);
        }

        _values[Intervals + 1] = _values[Intervals];
    }

    /// <summary>Where x, held within [0, 1], lies in any such table: the whole part of its place read from the bits of a rounded sum.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static TablePlace Place(Lanes x)
    {
        var position = LaneMath.Clamp(x, 0.0, 1.0) * Intervals;
        var rounded = position - Vector256.Create(0.5) + Vector256.Create(LaneMath.Rounder);
        var places = rounded.AsInt64() & Vector256.Create((long)Intervals);
        var rest = position - (rounded - Vector256.Create(LaneMath.Rounder));
        return new TablePlace((int)places.GetElement(0), (int)places.GetElement(1), (int)places.GetElement(2), (int)places.GetElement(3), rest);
    }

    /// <summary>The value at a place; a place never lies outside the table, so that no bound is checked.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal Lanes At(in TablePlace place)
    {
        ref var values = ref MemoryMarshal.GetArrayDataReference(_values);
        ref var first = ref Unsafe.Add(ref values, place.First);
        ref var second = ref Unsafe.Add(ref values, place.Second);
        ref var third = ref Unsafe.Add(ref values, place.Third);
        ref var fourth = ref Unsafe.Add(ref values, place.Fourth);
        var low = Vector256.Create(first, second, third, fourth);
        var high = Vector256.Create(Unsafe.Add(ref first, 1), Unsafe.Add(ref second, 1), Unsafe.Add(ref third, 1), Unsafe.Add(ref fourth, 1));
        return low + (place.Rest * (high - low));
    }

    /// <summary>The value at x, held within [0, 1].</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal Lanes At(Lanes x) => At(Place(x));
}

/// <summary>Four places in a <see cref="UnitTable"/>: the entry below each and how far beyond it.</summary>
internal readonly record struct TablePlace(int First, int Second, int Third, int Fourth, Lanes Rest);
