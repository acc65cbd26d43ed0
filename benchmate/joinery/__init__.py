"""The catalogue of joint families: one line each."""

from benchmate.frame.family import Family
from benchmate.joinery import end_cut
from benchmate.joinery.chamfer import family as chamfer
from benchmate.joinery.post_tenon import family as post_tenon

FAMILIES: tuple[Family, ...] = (
    end_cut.FAMILY,
    post_tenon.FAMILY,
    chamfer.FAMILY,
)
