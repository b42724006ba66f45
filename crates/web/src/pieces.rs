//! Several byte strings as one: each after its length, four bytes with the lowest first.

/// Packs byte strings.
///
/// ```
/// use arcata_web::pieces::{pack, unpack};
///
/// let packed = pack(&[b"score", b""]);
/// assert_eq!(unpack(&packed), Some(vec![b"score".as_slice(), b"".as_slice()]));
/// assert_eq!(unpack(&packed[1..]), None);
/// ```
#[must_use]
pub fn pack(pieces: &[&[u8]]) -> Vec<u8> {
    let mut packed = Vec::with_capacity(pieces.iter().map(|piece| piece.len() + 4).sum());
    for piece in pieces {
        // A module's memory holds no more than that.
        let length = u32::try_from(piece.len()).unwrap_or(u32::MAX);
        packed.extend(length.to_le_bytes());
        packed.extend_from_slice(piece);
    }
    packed
}

/// Unpacks them; nothing where lengths and bytes do not fit.
#[must_use]
pub fn unpack(packed: &[u8]) -> Option<Vec<&[u8]>> {
    let (mut pieces, mut rest) = (Vec::new(), packed);
    while !rest.is_empty() {
        let (length, after) = rest.split_first_chunk::<4>()?;
        let length = usize::try_from(u32::from_le_bytes(*length)).ok()?;
        let (piece, after) = after.split_at_checked(length)?;
        pieces.push(piece);
        rest = after;
    }
    Some(pieces)
}
