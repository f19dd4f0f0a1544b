namespace BridgeForm.Stocking.Cutting;

/// <summary>
/// How much work one job may cost, counted and not timed, so that the same pieces get the same plan everywhere. A unit is one
/// filling compared, some thirty nanoseconds.
/// </summary>
internal sealed class CuttingEffort
{
    // Jobs of the samples stay below this; long bridges have more pieces, and more to gain.
    private const long Fixed = 2_500_000;
    private const long EachPiece = 800;

    // A cell of the grid is a sum and a comparison; a filling is also stored.
    private const int CellsAUnit = 16;

    private long _left;

    private readonly CancellationToken _token;

    private CuttingEffort(long most, CancellationToken token) => (_left, _token) = (most, token);

    /// <summary>No more rounds, and no further dives.</summary>
    public bool IsSpent => _left <= 0;

    /// <summary>What a job with so many pieces may cost.</summary>
    public static CuttingEffort For(int pieces, CancellationToken token = default) => new(Fixed + (EachPiece * pieces), token);

    /// <summary>Fillings were compared one by one.</summary>
    public void Compared(long fillings) => Spend(fillings);

    /// <summary>Cells of a grid were filled.</summary>
    public void Filled(long cells) => Spend(cells / CellsAUnit);

    private void Spend(long units)
    {
        _token.ThrowIfCancellationRequested();
        _left -= units;
    }
}
