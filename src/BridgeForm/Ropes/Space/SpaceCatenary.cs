using BridgeForm.Solids;

namespace BridgeForm.Ropes.Space;

/// <summary>
/// A piece of elastic rope in space under its own weight and a wind across it, both a force for each metre of unstressed rope:
/// their sum is one direction, and in the plane of that direction the piece is an <see cref="ElasticCatenary"/>. World axes,
/// metres, newtons.
/// </summary>
internal readonly struct SpaceCatenary
{
    private readonly Vector3d _across;
    private readonly Vector3d _along;
    private readonly ElasticCatenary _plane;
    private readonly double _level;
    private readonly double _length;
    private readonly Vector3d _load;

    /// <summary>Hangs it.</summary>
    /// <param name="force">With which it pulls at its A-side end, from A towards B.</param>
    /// <param name="length">Unstressed.</param>
    /// <param name="load">On each metre of it: weight down, wind to the side.</param>
    /// <param name="stiffness">EA.</param>
    public SpaceCatenary(Vector3d force, double length, Vector3d load, double stiffness)
    {
        var weight = load.Length;
        _along = weight > 0 ? load / weight : -Vector3d.UnitY;
        var hung = force.Dot(_along);
        var level = force - (hung * _along);
        _level = level.Length;
        _across = level / _level;
        (_length, _load) = (length, load);
        _plane = new ElasticCatenary(_level, hung, length, weight, stiffness);
        Force = force;
        Reach = (_plane.X * _across) + (_plane.Drop * _along);
    }

    /// <summary>As given.</summary>
    public Vector3d Force { get; }

    /// <summary>The same at the B-side end, from A towards B: it pulls there with the opposite of this.</summary>
    public Vector3d ForceEnd => Force - (_length * _load);

    /// <summary>The B-side end from the A-side end.</summary>
    public Vector3d Reach { get; }

    /// <summary>Largest tension: at one of its ends, the load being the same all along.</summary>
    public double LargestTension => Math.Max(_plane.TensionStart, _plane.TensionEnd);

    /// <summary>∂Reach/∂Force, metres per newton.</summary>
    public Matrix3 Give => Combined(_plane.XByHorizontal, _plane.XByVertical, _plane.DropByVertical, _plane.X / _level);

    /// <summary>
    /// Its inverse, newtons a metre: out of its plane the piece swings like a pendulum, with level pull over level reach.
    /// </summary>
    public Matrix3 Stiffness
    {
        get
        {
            var (hh, hv, vv) = (_plane.XByHorizontal, _plane.XByVertical, _plane.DropByVertical);
            var determinant = (hh * vv) - (hv * hv);
            return Combined(vv / determinant, -hv / determinant, hh / determinant, _level / _plane.X);
        }
    }

    private Matrix3 Combined(double hh, double hv, double vv, double beside) =>
        (beside * Matrix3.Identity)
        + Matrix3.Outer(_across, ((hh - beside) * _across) + (hv * _along))
        + Matrix3.Outer(_along, (hv * _across) + ((vv - beside) * _along));
}
