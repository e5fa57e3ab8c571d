namespace Seedfall.Planning.Ground.Door;

/// <summary>What stands around a patch.</summary>
internal static class SkyRules
{
    private const int MostObstacles = 40;

    internal static void Check(IReadOnlyList<SkyObstacle> obstacles, string path, Findings found)
    {
        if (obstacles.Count > MostObstacles)
        {
            found.Add(path, $"{obstacles.Count}", $"at most {MostObstacles} obstacles");
        }

        for (var i = 0; i < obstacles.Count; i++)
        {
            Check(obstacles[i], $"{path}[{i}]", found);
        }
    }

    private static void Check(SkyObstacle obstacle, string path, Findings found)
    {
        found.Words($"{path}.name", obstacle.Name);
        found.Range($"{path}.from", obstacle.FromDeg, 0.0, 360.0, "degrees");
        found.Range($"{path}.to", obstacle.ToDeg, 0.0, 360.0, "degrees");
        if (obstacle.FromDeg == obstacle.ToDeg)
        {
            found.Add($"{path}.to", Findings.Text(obstacle.ToDeg, "degrees"), "a right edge other than the left one; 0 to 360 is all around");
        }

        found.Range($"{path}.heightAngle", obstacle.HeightAngleDeg, 0.0, 90.0, "degrees");
        found.Above($"{path}.height", obstacle.Height?.Meters, 3000.0, "m");
        found.Above($"{path}.distance", obstacle.Distance?.Meters, 100_000.0, "m");
        if (obstacle.AngleDeg is null)
        {
            found.Add($"{path}.heightAngle", "nothing", "the angle to its top, or its height and distance");
        }

        found.Share($"{path}.through", obstacle.Through);
        found.Share($"{path}.throughBare", obstacle.ThroughBare);
    }
}
