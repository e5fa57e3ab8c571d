using System.Numerics;
using Seedfall.Photos.Cover;

namespace Seedfall.Fit.Cover;

/// <summary>Fits a <see cref="SmallNet"/> by stochastic descent with adaptive moments (Kingma and Ba 2015) and decay of its weights.</summary>
internal static class NetFit
{
    internal const int Units = 12;
    private const int Epochs = 12;
    private const int Batch = 64;
    private const float Rate = 0.004f;
    private const float Decay = 0.02f;

    internal static SmallNet Fit(IReadOnlyList<float[]> rows, IReadOnlyList<float> answers, int seed)
    {
        var random = new Random(seed);
        var (n, padded) = (rows[0].Length, rows.Select(Pad).ToArray());
        var width = padded[0].Length;
        float Small(double spread) => (float)((random.NextDouble() - 0.5) * spread);
        float[][] groups = [.. Enumerable.Range(0, Units).Select(_ => Enumerable.Range(0, width).Select(j => j < n ? Small(1.2 / Math.Sqrt(n)) : 0f).ToArray()), [.. Enumerable.Range(0, Units + 1).Select(h => h < Units ? Small(1.0) : -1f)]];
        var slopes = groups.Select(g => new float[g.Length]).ToArray();
        var moments = groups.Select(g => new Moments(g.Length)).ToArray();
        var order = Enumerable.Range(0, rows.Count).ToArray();
        for (int epoch = 0, step = 1; epoch < Epochs; epoch++)
        {
            random.Shuffle(order);
            var rate = Rate * (1f - ((float)epoch / Epochs));
            for (var at = 0; at + Batch <= order.Length; at += Batch, step++)
            {
                foreach (var slope in slopes)
                {
                    Array.Clear(slope);
                }

                for (var i = at; i < at + Batch; i++)
                {
                    AddSlopes(groups, padded[order[i]], answers[order[i]], slopes);
                }

                for (var g = 0; g < groups.Length; g++)
                {
                    moments[g].Move(groups[g], slopes[g], rate, step, g < Units ? n : 0, rate * Decay);
                }
            }
        }

        return new SmallNet([.. groups[..Units].Select(unit => unit[..(n + 1)])], groups[Units]);
    }

    /// <summary>The row, a one for the constant, and zeros to whole vectors.</summary>
    private static float[] Pad(float[] row)
    {
        var padded = new float[(row.Length + Vector<float>.Count) / Vector<float>.Count * Vector<float>.Count];
        row.CopyTo(padded, 0);
        padded[row.Length] = 1f;
        return padded;
    }

    private static void AddSlopes(float[][] groups, float[] row, float answer, float[][] slopes)
    {
        var output = groups[Units];
        Span<float> sums = stackalloc float[Units];
        var z = output[^1];
        for (var h = 0; h < Units; h++)
        {
            var sum = Vector<float>.Zero;
            for (var j = 0; j < row.Length; j += Vector<float>.Count)
            {
                sum += new Vector<float>(row, j) * new Vector<float>(groups[h], j);
            }

            sums[h] = Vector.Sum(sum);
            z += output[h] * SmallNet.Bend(sums[h]);
        }

        var error = (Logistic.Of(z) - answer) / Batch;
        slopes[Units][Units] += error;
        for (var h = 0; h < Units; h++)
        {
            slopes[Units][h] += error * SmallNet.Bend(sums[h]);
            var back = new Vector<float>(error * output[h] * BendSlope(sums[h]));
            for (var j = 0; j < row.Length; j += Vector<float>.Count)
            {
                (new Vector<float>(slopes[h], j) + (back * new Vector<float>(row, j))).CopyTo(slopes[h], j);
            }
        }
    }

    /// <summary>Slope of <see cref="SmallNet.Bend"/>.</summary>
    private static float BendSlope(float x)
    {
        if (Math.Abs(x) >= 3f)
        {
            return 0f;
        }

        var (square, under) = (x * x, 27f + (9f * x * x));
        return ((27f + (3f * square)) / under) - (18f * square * (27f + square) / (under * under));
    }

    private sealed class Moments(int length)
    {
        private readonly float[] _first = new float[length];
        private readonly float[] _second = new float[length];

        internal void Move(float[] values, float[] slopes, float rate, int step, int decaying, float decay)
        {
            var (one, two) = (1f - MathF.Pow(0.9f, step), 1f - MathF.Pow(0.999f, step));
            for (var i = 0; i < values.Length; i++)
            {
                _first[i] = (0.9f * _first[i]) + (0.1f * slopes[i]);
                _second[i] = (0.999f * _second[i]) + (0.001f * slopes[i] * slopes[i]);
                values[i] -= (rate * (_first[i] / one) / (MathF.Sqrt(_second[i] / two) + 1e-8f)) + (i < decaying ? decay * values[i] : 0f);
            }
        }
    }
}
