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
        var n = rows[0].Length;
        float Small(double width) => (float)((random.NextDouble() - 0.5) * width);
        var net = new SmallNet(
            [.. Enumerable.Range(0, Units).Select(_ => Enumerable.Range(0, n + 1).Select(j => j < n ? Small(1.2 / Math.Sqrt(n)) : 0f).ToArray())],
            [.. Enumerable.Range(0, Units + 1).Select(h => h < Units ? Small(1.0) : -1f)]);
        float[][] groups = [.. net.Hidden, net.Output];
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
                    AddSlopes(net, rows[order[i]], answers[order[i]], slopes);
                }

                for (var g = 0; g < groups.Length; g++)
                {
                    moments[g].Move(groups[g], slopes[g], rate, step, g < Units ? rate * Decay : 0f);
                }
            }
        }

        return net;
    }

    private static void AddSlopes(SmallNet net, float[] row, float answer, float[][] slopes)
    {
        Span<float> sums = stackalloc float[Units];
        var z = net.Output[^1];
        for (var h = 0; h < Units; h++)
        {
            var weights = net.Hidden[h];
            var sum = weights[^1];
            for (var j = 0; j < row.Length; j++)
            {
                sum += weights[j] * row[j];
            }

            sums[h] = sum;
            z += net.Output[h] * SmallNet.Bend(sum);
        }

        var error = (Logistic.Of(z) - answer) / Batch;
        slopes[Units][Units] += error;
        for (var h = 0; h < Units; h++)
        {
            slopes[Units][h] += error * SmallNet.Bend(sums[h]);
            var back = error * net.Output[h] * BendSlope(sums[h]);
            slopes[h][^1] += back;
            for (var j = 0; j < row.Length; j++)
            {
                slopes[h][j] += back * row[j];
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

        internal void Move(float[] values, float[] slopes, float rate, int step, float decay)
        {
            var (one, two) = (1f - MathF.Pow(0.9f, step), 1f - MathF.Pow(0.999f, step));
            for (var i = 0; i < values.Length; i++)
            {
                _first[i] = (0.9f * _first[i]) + (0.1f * slopes[i]);
                _second[i] = (0.999f * _second[i]) + (0.001f * slopes[i] * slopes[i]);
                values[i] -= (rate * (_first[i] / one) / (MathF.Sqrt(_second[i] / two) + 1e-8f)) + (i < values.Length - 1 ? decay * values[i] : 0f);
            }
        }
    }
}
