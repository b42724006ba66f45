//! The cheapest way through a lattice for every number of changes.

use super::lattice::{Lattice, LatticeNode};
use crate::Stroke;
use crate::plan::costs::Costs;
use crate::plan::course::Course;
use crate::plan::links::Approach;
use crate::plan::search::{DirectionAndCell, LineSearch, Row, SettledRow, cheapest};
use crate::plan::step_prices::NEVER;
use crate::plan::{Allowed, PlanSettings};

/// The cheapest way with a number of changes: which strokes, and what it all costs.
#[derive(Clone, Debug)]
pub(super) struct Way {
    pub(super) nodes: Vec<usize>,
    pub(super) total: i64,
}

/// For no change, one, two … the cheapest way; `None` where there is none with just so many.
pub(super) fn ways(
    lattice: &Lattice,
    strokes: &[Stroke],
    allowed: &[Allowed],
    settings: &PlanSettings,
    most: usize,
) -> Vec<Option<Way>> {
    match settings.grid {
        crate::plan::Grid::Coarse => ways_on::<24>(lattice, strokes, allowed, settings, most),
        crate::plan::Grid::Fine => ways_on::<48>(lattice, strokes, allowed, settings, most),
        crate::plan::Grid::Finer => ways_on::<96>(lattice, strokes, allowed, settings, most),
        crate::plan::Grid::Finest => ways_on::<192>(lattice, strokes, allowed, settings, most),
    }
}

pub(super) fn ways_on<const CELLS: usize>(
    lattice: &Lattice,
    strokes: &[Stroke],
    allowed: &[Allowed],
    settings: &PlanSettings,
    most: usize,
) -> Vec<Option<Way>> {
    let costs = Costs::of(strokes, Course::loose(strokes.len()), settings, CELLS);
    // Any stroke that begins where another ends tells how the line goes on there.
    let mut begins_with = vec![None; lattice.events.len() + 1];
    for (shape, (extent, _)) in lattice.shapes.iter().enumerate() {
        begins_with[extent.first - lattice.events.start].get_or_insert(shape);
    }
    let next = |shape: usize| {
        let (extent, _) = lattice.shapes[shape];
        begins_with[extent.end - lattice.events.start]
    };
    let mut walk = RepairWalk::<CELLS> {
        lattice,
        strokes,
        search: LineSearch::over(costs, allowed, next),
        ending: vec![Vec::new(); lattice.events.len() + 1],
        most,
        rows: Vec::with_capacity(lattice.nodes.len() * (most + 1)),
    };
    walk.forward();
    (0..=most).map(|changes| walk.way(changes)).collect()
}

/// What is known at the end of a node with a number of changes made.
type Reached<const CELLS: usize> = Option<(i64, Row<CELLS>)>;

struct RepairWalk<'a, const CELLS: usize> {
    lattice: &'a Lattice,
    strokes: &'a [Stroke],
    search: LineSearch<'a, CELLS>,
    /// The nodes that end before an event.
    ending: Vec<Vec<usize>>,
    most: usize,
    /// By node and number of changes.
    rows: Vec<Reached<CELLS>>,
}

impl<const CELLS: usize> RepairWalk<'_, CELLS> {
    fn row(&self, node: usize, changes: usize) -> Option<&(i64, Row<CELLS>)> {
        self.rows[node * (self.most + 1) + changes].as_ref()
    }

    fn forward(&mut self) {
        for index in 0..self.lattice.nodes.len() {
            let node = &self.lattice.nodes[index];
            let before = self.before(node);
            for changes in 0..=self.most {
                let landed =
                    changes.checked_sub(node.changes.len()).and_then(|made| self.landed(node, &before, made));
                let reached = landed.and_then(|(base, begins)| {
                    let SettledRow { row, base: taken } = self.search.travelled(node.shape, &begins);
                    (taken < i64::from(NEVER)).then(|| (base + taken + node.price, row))
                });
                self.rows.push(reached);
            }
            self.ending[node.extent.end - self.lattice.events.start].push(index);
        }
    }

    /// The nodes that may come before one, grouped by how it is reached from them.
    fn before(&self, node: &LatticeNode) -> Vec<(Approach, Vec<usize>)> {
        let mut groups: Vec<(Approach, Vec<usize>)> = Vec::new();
        for index in &self.ending[node.extent.first - self.lattice.events.start] {
            let before = &self.lattice.nodes[*index];
            if !before.may_precede(node) {
                continue;
            }
            let approach = self.approach(before, node);
            match groups.iter_mut().find(|(known, _)| *known == approach) {
                Some((_, members)) => members.push(*index),
                None => groups.push((approach, vec![*index])),
            }
        }
        groups
    }

    fn approach(&self, before: &LatticeNode, node: &LatticeNode) -> Approach {
        self.search.costs.tried(&self.strokes[before.shape], &self.strokes[node.shape])
    }

    /// What setting the bow down for a node costs when `made` changes were made before it.
    fn landed(
        &self,
        node: &LatticeNode,
        before: &[(Approach, Vec<usize>)],
        made: usize,
    ) -> Option<(i64, Row<CELLS>)> {
        if node.extent.first == self.lattice.events.start {
            return (made == 0).then(|| (0, self.search.landings(node.shape, None)));
        }
        let rows = |members: &[usize]| -> Vec<_> {
            members.iter().filter_map(|member| self.row(*member, made)).collect()
        };
        let base = before.iter().flat_map(|(_, members)| rows(members)).map(|(base, _)| *base).min()?;
        let mut landed = [[NEVER; CELLS]; 2];
        for (approach, members) in before {
            let mut merged = [[NEVER; CELLS]; 2];
            for (own, row) in rows(members) {
                lower_by(&mut merged, row, *own - base);
            }
            lower_by(&mut landed, &self.search.landings(node.shape, Some((approach, &merged))), 0);
        }
        Some((base, landed))
    }

    /// The cheapest way through with just so many changes.
    fn way(&self, changes: usize) -> Option<Way> {
        let last = &self.ending[self.lattice.events.len()];
        let (total, mut node) =
            last.iter().filter_map(|node| Some((self.row(*node, changes)?.0, *node))).min()?;
        let mut nodes = vec![node];
        let mut made = changes;
        let mut stand = cheapest(&self.row(node, changes)?.1);
        while self.lattice.nodes[node].extent.first > self.lattice.events.start {
            made -= self.lattice.nodes[node].changes.len();
            (node, stand) = self.came_from(node, made, stand)?;
            nodes.push(node);
        }
        nodes.reverse();
        Some(Way { nodes, total })
    }

    /// From which node, and from where on the bow, a node is cheapest reached.
    fn came_from(
        &self,
        node: usize,
        made: usize,
        stand: DirectionAndCell,
    ) -> Option<(usize, DirectionAndCell)> {
        let node = &self.lattice.nodes[node];
        let mut best: Option<(i64, usize, DirectionAndCell)> = None;
        for index in &self.ending[node.extent.first - self.lattice.events.start] {
            let before = &self.lattice.nodes[*index];
            let Some((base, row)) = self.row(*index, made).filter(|_| before.may_precede(node)) else {
                continue;
            };
            let approach = self.approach(before, node);
            let (choice, cost) = self.search.choose_priced(node.shape, Some(&approach), Some(row), stand);
            let total = base + i64::from(cost);
            if cost < NEVER && best.is_none_or(|(least, ..)| total < least) {
                let from = self.search.stood(node.shape, Some(&approach), row, choice);
                best = Some((total, *index, from));
            }
        }
        best.map(|(_, index, from)| (index, from))
    }
}

/// Lowers a row to what another offers at a price.
fn lower_by<const CELLS: usize>(row: &mut Row<CELLS>, offered: &Row<CELLS>, price: i64) {
    let price = i32::try_from(price).unwrap_or(NEVER).min(NEVER);
    for (way, offered) in row.iter_mut().zip(offered) {
        for (cell, offer) in way.iter_mut().zip(offered) {
            *cell = (*cell).min((offer + price).min(NEVER));
        }
    }
}
