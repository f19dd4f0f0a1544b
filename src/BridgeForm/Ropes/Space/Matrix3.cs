using BridgeForm.Solids;

namespace BridgeForm.Ropes.Space;

/// <summary>Three by three numbers, as columns.</summary>
internal readonly record struct Matrix3(Vector3d A, Vector3d B, Vector3d C)
{
    /// <summary>1 on the diagonal.</summary>
    public static Matrix3 Identity => new(Vector3d.UnitX, Vector3d.UnitY, Vector3d.UnitZ);

    public static Matrix3 operator +(Matrix3 m, Matrix3 n) => new(m.A + n.A, m.B + n.B, m.C + n.C);

    public static Matrix3 operator -(Matrix3 m, Matrix3 n) => new(m.A - n.A, m.B - n.B, m.C - n.C);

    public static Matrix3 operator *(double k, Matrix3 m) => new(k * m.A, k * m.B, k * m.C);

    /// <summary>The product with a column.</summary>
    public static Vector3d operator *(Matrix3 m, Vector3d v) => (v.X * m.A) + (v.Y * m.B) + (v.Z * m.C);

    /// <summary>The product of two.</summary>
    public static Matrix3 operator *(Matrix3 m, Matrix3 n) => new(m * n.A, m * n.B, m * n.C);

    /// <summary>A column times a row.</summary>
    public static Matrix3 Outer(Vector3d column, Vector3d row) => new(row.X * column, row.Y * column, row.Z * column);

    /// <summary>By cofactors; not finite where there is none.</summary>
    public Matrix3 Inverse()
    {
        var (p, q, r) = (B.Cross(C), C.Cross(A), A.Cross(B));
        var determinant = A.Dot(p);
        return new Matrix3(
            new Vector3d(p.X, q.X, r.X) / determinant,
            new Vector3d(p.Y, q.Y, r.Y) / determinant,
            new Vector3d(p.Z, q.Z, r.Z) / determinant);
    }
}
