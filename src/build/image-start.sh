#!/bin/sh
# Starts Jointwright with the runtime that came with it.
self=$0
while [ -h "$self" ]; do
  link=$(readlink "$self")
  case $link in
    /*) self=$link ;;
    *) self=${self%/*}/$link ;;
  esac
done
case $self in
  */*) app=${self%/*}/../lib/app ;;
  *) app=../lib/app ;;
esac
exec "$app/../runtime/bin/java" OPTIONS \
  -cp "PATH" MAIN "$@"
