namespace Boardwright.Sawing;

/// <summary>The rim of a section measured by radii, as corners round its centre. Millimetres.</summary>
internal sealed record SectionRim(double[] X, double[] Y)
{
    public static SectionRim Of(IReadOnlyList<double> radiiMm)
    {
        var (x, y) = (new double[radiiMm.Count], new double[radiiMm.Count]);
        for (var i = 0; i < x.Length; i++)
        {
            var (sin, cos) = Math.SinCos(2.0 * Math.PI * i / x.Length);
            (x[i], y[i]) = (radiiMm[i] * sin, radiiMm[i] * cos);
        }

        return new(x, y);
    }

    /// <summary>Area, hollows and all.</summary>
    public double Area
    {
        get
        {
            var twice = 0.0;
            for (var (i, j) = (0, X.Length - 1); i < X.Length; j = i++)
                twice += (X[j] * Y[i]) - (X[i] * Y[j]);
            return Math.Abs(twice) / 2.0;
        }
    }

    /// <summary>Width seen along a direction.</summary>
    public double Span(double u, double v) => Support(u, v) + Support(-u, -v);

    /// <summary>Farthest reach in a direction.</summary>
    public double Support(double u, double v) => Enumerable.Range(0, X.Length).Max(i => (X[i] * u) + (Y[i] * v));

    /// <summary>A convex part of the section: whatever lies beyond a hollow, seen from the centre, is given up.</summary>
    public SectionRim WithoutHollows()
    {
        var rim = this;
        for (var hollow = rim.Hollow(); hollow >= 0; hollow = rim.Hollow())
            rim = rim.Cut(rim.X[hollow], rim.Y[hollow]);
        return rim;
    }

    /// <summary>Corner that lies deepest inside the chord of its neighbours; -1 where there is none.</summary>
    private int Hollow()
    {
        var (deepest, at) = (1e-7, -1);
        for (var i = 0; i < X.Length; i++)
        {
            var (before, after) = ((i + X.Length - 1) % X.Length, (i + 1) % X.Length);
            var (dx, dy) = (X[after] - X[before], Y[after] - Y[before]);

            // Clockwise: a corner right of the way from its neighbour before to the one after lies inside.
            var depth = ((dy * (X[i] - X[before])) - (dx * (Y[i] - Y[before]))) / Math.Sqrt((dx * dx) + (dy * dy));
            if (depth > deepest)
                (deepest, at) = (depth, i);
        }

        return at;
    }

    /// <summary>Gives up what lies beyond the line through a point, square to the way from the centre to it.</summary>
    private SectionRim Cut(double px, double py)
    {
        var (x, y, limit) = (new List<double>(), new List<double>(), (px * px) + (py * py));
        for (var (i, j) = (0, X.Length - 1); i < X.Length; j = i++)
        {
            var (from, to) = ((X[j] * px) + (Y[j] * py) - limit, (X[i] * px) + (Y[i] * py) - limit);
            if ((from > 0.0) != (to > 0.0))
                Add(X[j] + ((X[i] - X[j]) * from / (from - to)), Y[j] + ((Y[i] - Y[j]) * from / (from - to)));
            if (to <= 0.0)
                Add(X[i], Y[i]);
        }

        return new([.. x], [.. y]);

        void Add(double cx, double cy)
        {
            if (x.Count == 0 || Math.Abs(x[^1] - cx) + Math.Abs(y[^1] - cy) > 1e-9)
            {
                x.Add(cx);
                y.Add(cy);
            }
        }
    }
}
